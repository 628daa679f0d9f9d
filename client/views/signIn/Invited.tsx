import type { ReactNode } from 'react';
import { troubleText } from '../../library/http.ts';
import { clearDesk } from '../../library/leave.ts';
import { enterWithLink, goToIdentity, inWords } from '../../library/signIn.ts';
import { go } from '../../router.ts';
import { words } from '../../words/words.ts';

/** Somebody new chooses how they come in: by the link alone, or with the orchestra's own sign-in from now on. */
export function Invited({ token, identity, say }: { token: string; identity: string; say(sentence: string): void }): ReactNode {
  const attempt = (work: () => Promise<void>) => void work().catch((fault: unknown) => say(troubleText(inWords(fault))));
  const withIdentity = async () => {
    const there = await goToIdentity(token);
    // The invitation is not to be found in the history.
    history.replaceState(null, '', '/sign-in');
    location.assign(there);
  };
  const byLink = async () => {
    await enterWithLink(token);
    await clearDesk();
    go({ at: 'shelf' }, { replace: true });
  };
  return (
    <p className="rows at-the-door">
      <button type="button" onClick={() => attempt(byLink)}>
        {words.signIn.enter}
      </button>
      <button type="button" onClick={() => attempt(withIdentity)}>
        {words.signIn.identity(identity)}
      </button>
    </p>
  );
}
