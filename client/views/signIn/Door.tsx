import { useRef, useState, type FormEvent, type ReactNode } from 'react';
import type { WaysIn } from '../../../core/agreement/wire/signIn.ts';
import { troubleText } from '../../library/http.ts';
import { enterWithPassword, goToIdentity, inWords, wantLetter } from '../../library/signIn.ts';
import { PasswordField } from '../../ui/PasswordField.tsx';
import { words } from '../../words/words.ts';

interface Props {
  /** Null while they are asked for, and where they cannot be. */
  ways: WaysIn | null;
  say(sentence: string): void;
  cameIn(): Promise<void>;
}

/** The ways in, beside a link that was handed out. */
export function Door({ ways, say, cameIn }: Props): ReactNode {
  const address = useRef<HTMLInputElement>(null);
  const [busy, setBusy] = useState(false);
  const attempt = (work: () => Promise<void>) => {
    setBusy(true);
    work()
      .catch((fault: unknown) => say(troubleText(inWords(fault))))
      .finally(() => setBusy(false));
  };
  const enter = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const said = new FormData(event.currentTarget);
    attempt(async () => {
      await enterWithPassword(String(said.get('address')).trim(), String(said.get('password')));
      await cameIn();
    });
  };
  const send = () => {
    const to = address.current!;
    if (!to.value.trim() || !to.checkValidity()) {
      say(words.signIn.addressFirst);
      to.focus();
      return;
    }
    attempt(async () => say(words.signIn.sent(to.value.trim(), (await wantLetter(to.value.trim())).minutes)));
  };
  return (
    <form className="rows at-the-door" onSubmit={enter}>
      <label>
        <span>{words.signIn.address}</span>
        <input ref={address} name="address" type="email" required maxLength={200} autoComplete="username" autoCapitalize="none" spellCheck={false} />
      </label>
      <PasswordField label={words.signIn.password} name="password" kind="current-password" />
      <button type="submit" disabled={busy}>
        {words.signIn.enter}
      </button>
      {ways?.letter ? (
        <p className="instead">
          <span>{words.signIn.forgotten}</span>
          <button type="button" disabled={busy} onClick={send}>
            {words.signIn.send}
          </button>
        </p>
      ) : null}
      {ways?.identity ? (
        <p className="instead">
          <button type="button" disabled={busy} onClick={() => attempt(async () => location.assign(await goToIdentity()))}>
            {words.signIn.identity(ways.identity)}
          </button>
        </p>
      ) : null}
    </form>
  );
}
