import { useState, type FormEvent, type ReactNode } from 'react';
import type { MySignIn as View } from '../../../core/agreement/wire/signIn.ts';
import { fetchMySignIn, inWords, isRefusedFor, prove } from '../../library/signIn.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { Fold } from '../../ui/Fold.tsx';
import { PasswordField } from '../../ui/PasswordField.tsx';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';
import { SignedInOn } from './SignedInOn.tsx';
import { MyWays } from './MyWays.tsx';

function summary({ address, password, identity, offers }: View): string {
  if (address && (password || address.confirmed)) return words.mySignIn.now(address.address, password);
  return identity && offers.identity ? words.mySignIn.onlyIdentity(offers.identity) : words.mySignIn.none;
}

/** How I sign in, and where I am signed in: for me alone. */
export function MySignIn({ act }: { act: Act }): ReactNode {
  const { value, again } = useLoaded('my sign-in', fetchMySignIn);
  /** What is done once it is proven who I am. */
  const [held, setHeld] = useState<(() => Promise<string | null | void>) | null>(null);
  if (!value) return null;
  const done: Act = (work) =>
    act(async () => {
      try {
        const sentence = await work();
        again();
        return sentence;
      } catch (fault) {
        if (value.password && isRefusedFor(fault, 'PROVE_FIRST')) {
          setHeld(() => work);
          return null;
        }
        throw inWords(fault);
      }
    });
  const onProve = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const present = String(new FormData(event.currentTarget).get('present'));
    void done(async () => {
      await prove(present);
      const sentence = await held!();
      setHeld(null);
      return sentence;
    });
  };
  return (
    <section className="rows my-sign-in">
      <h2>{words.mySignIn.title}</h2>
      <p>{summary(value)}</p>
      {value.only === null ? null : <p>{words.mySignIn.only(value.only)}</p>}
      <Fold word={words.mySignIn.change} of="my-sign-in">
        {value.may ? <MyWays value={value} act={done} /> : <p>{words.mySignIn.mayNot}</p>}
        {held ? (
          <form onSubmit={onProve}>
            <PasswordField label={words.mySignIn.present} name="present" kind="current-password" />
            <button type="submit">{words.mySignIn.prove}</button>
          </form>
        ) : null}
        <SignedInOn sessions={value.sessions} act={done} />
      </Fold>
    </section>
  );
}
