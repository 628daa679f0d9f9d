import type { FormEvent, ReactNode } from 'react';
import { LONGEST_PASSWORD, type MySignIn } from '../../../core/agreement/wire/signIn.ts';
import { bindIdentity, forgetIdentity, keepAddress, setPassword } from '../../library/signIn.ts';
import { PasswordField } from '../../ui/PasswordField.tsx';
import { languageNow } from '../../words/language.ts';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';

/** The ways of one's own: an address, a password beside it, the orchestra's own sign-in. */
export function MyWays({ value, act }: { value: MySignIn; act: Act }): ReactNode {
  const { address, claimed, password, identity, offers } = value;
  const onAddress = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const typed = String(new FormData(event.currentTarget).get('address')).trim();
    void act(async () => {
      const after = await keepAddress(typed, languageNow());
      return after.claimed ? words.mySignIn.claimed(after.claimed) : words.mySignIn.addressKept(typed);
    });
  };
  const onPassword = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    const typed = String(new FormData(form).get('new-password'));
    void act(async () => {
      await setPassword(typed);
      form.reset();
      return words.mySignIn.passwordSet;
    });
  };
  const forget = () => act(async () => keepAddress(null, languageNow()).then(() => words.mySignIn.addressGone));
  const without = () => act(async () => setPassword(null).then(() => words.mySignIn.passwordGone));
  const bind = () => act(async () => location.assign(await bindIdentity()));
  const unbind = (name: string) => act(async () => forgetIdentity().then(() => words.mySignIn.unbound(name)));
  return (
    <>
      <form onSubmit={onAddress} key={address?.address ?? 'none'}>
        <label>
          <span>{words.mySignIn.address}</span>
          <input name="address" type="email" required maxLength={200} autoComplete="email" autoCapitalize="none" spellCheck={false} defaultValue={address?.address ?? ''} />
        </label>
        <button type="submit">{words.mySignIn.keepAddress}</button>
        {address ? (
          <button type="button" onClick={() => void forget()}>
            {words.mySignIn.forgetAddress}
          </button>
        ) : null}
        {claimed ? <p>{words.mySignIn.claimed(claimed)}</p> : null}
      </form>
      {address ? (
        <form onSubmit={onPassword}>
          {/* A keeper of passwords files it under this. */}
          <input type="hidden" name="username" autoComplete="username" value={address.address} />
          <PasswordField label={words.mySignIn.password} name="new-password" kind="new-password" hint={words.mySignIn.hint} longest={LONGEST_PASSWORD * 2} />
          <button type="submit">{words.mySignIn.setPassword}</button>
          {password ? (
            <button type="button" onClick={() => void without()}>
              {words.mySignIn.noPassword}
            </button>
          ) : null}
        </form>
      ) : null}
      {offers.identity === null ? null : (
        <p className="my-identity">
          {identity ? <span>{words.mySignIn.bound(offers.identity)}</span> : null}
          <button type="button" onClick={() => void (identity ? unbind(offers.identity!) : bind())}>
            {identity ? words.mySignIn.unbind : words.mySignIn.bind(offers.identity)}
          </button>
        </p>
      )}
    </>
  );
}
