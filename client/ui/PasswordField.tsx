import { useState, type ReactNode } from 'react';
import { words } from '../words/words.ts';

interface Props {
  label: string;
  name: string;
  /** What a keeper of passwords is told of it. */
  kind: 'current-password' | 'new-password';
  hint?: string;
  longest?: number;
}

/** A password, hidden unless one wants to see it. What is pasted or filled in is taken as it is. */
export function PasswordField({ label, name, kind, hint, longest }: Props): ReactNode {
  const [shown, setShown] = useState(false);
  return (
    <div className="password-field">
      <label>
        <span>{label}</span>
        <input name={name} type={shown ? 'text' : 'password'} required maxLength={longest} autoComplete={kind} autoCapitalize="none" spellCheck={false} aria-describedby={hint ? `${name}-hint` : undefined} />
      </label>
      <button type="button" aria-label={`${shown ? words.signIn.hide : words.signIn.show}: ${label}`} onClick={() => setShown(!shown)}>
        {shown ? words.signIn.hide : words.signIn.show}
      </button>
      {hint ? <small id={`${name}-hint`}>{hint}</small> : null}
    </div>
  );
}
