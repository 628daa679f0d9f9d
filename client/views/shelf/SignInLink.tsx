import { useRef, useState, type ReactNode } from 'react';
import { words } from '../../words/words.ts';

/** A one-time link, to be handed to its person. */
export function SignInLink({ name, link }: { name: string; link: string }): ReactNode {
  const field = useRef<HTMLInputElement>(null);
  const [copied, setCopied] = useState(false);
  const copy = () => {
    field.current?.select();
    void navigator.clipboard?.writeText(link).then(() => setCopied(true));
  };
  return (
    <p className="sign-in-link" role="status">
      <label>
        <span>{words.shelf.linkFor(name)}</span>
        <input ref={field} readOnly value={link} onFocus={(event) => event.target.select()} />
      </label>
      <button type="button" onClick={copy}>
        {copied ? words.shelf.copied : words.shelf.copy}
      </button>
    </p>
  );
}
