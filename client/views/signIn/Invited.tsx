import type { ReactNode } from 'react';
import { troubleText } from '../../library/http.ts';
import { clearDesk } from '../../library/leave.ts';
import { enterWithLink, goToIdentity, inWords, takeUp } from '../../library/signIn.ts';
import { go } from '../../router.ts';
import { words } from '../../words/words.ts';

interface Props {
  token: string;
  /** The orchestra's own sign-in, where there is one. */
  identity: string | null;
  /** Whoever is signed in in this browser, by name. */
  here: string | null;
  say(sentence: string): void;
}

/** Somebody who is invited chooses how they come in: as the one who is signed in here, by the link alone, or with the orchestra's own sign-in from now on. */
export function Invited({ token, identity, here, say }: Props): ReactNode {
  const attempt = (work: () => Promise<void>) => void work().catch((fault: unknown) => say(troubleText(inWords(fault))));
  const withIdentity = async () => {
    const there = await goToIdentity(token);
    // The invitation is not to be found in the history.
    history.replaceState(null, '', '/sign-in');
    location.assign(there);
  };
  const by = (way: (token: string) => Promise<unknown>) => async () => {
    await way(token);
    await clearDesk();
    go({ at: 'shelf' }, { replace: true });
  };
  return (
    <p className="rows at-the-door">
      {here === null ? null : (
        <button type="button" onClick={() => attempt(by(takeUp))}>
          {words.signIn.asMyself(here)}
        </button>
      )}
      <button type="button" onClick={() => attempt(by(enterWithLink))}>
        {here === null ? words.signIn.enter : words.signIn.asSomebodyNew}
      </button>
      {identity === null ? null : (
        <button type="button" onClick={() => attempt(withIdentity)}>
          {words.signIn.identity(identity)}
        </button>
      )}
    </p>
  );
}
