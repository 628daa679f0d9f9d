import { useEffect, useRef, useState, type ReactNode } from 'react';
import { getJson, sendJson, troubleText } from '../../library/http.ts';
import { clearDesk } from '../../library/leave.ts';
import { go } from '../../router.ts';
import { words } from '../../words/words.ts';

/** Takes the one-time link the librarian gave. The page sends it, so that a preview of the link does not use it up. */
export function SignIn({ token: given }: { token: string | null }): ReactNode {
  const [token] = useState(given);
  const [fault, setFault] = useState<string | null>(null);
  const sent = useRef(false);
  useEffect(() => {
    if (!token || sent.current) return;
    sent.current = true;
    // It is nobody's business afterwards: not the history's, not the next page's.
    history.replaceState(null, '', '/sign-in');
    sendJson('POST', '/sign-in', { token })
      .then(clearDesk)
      .then(
        () => go({ at: 'shelf' }, { replace: true }),
        async (reason: unknown) => {
          // Who is signed in already and follows the old link from a letter is shown in.
          if (await getJson('/me').catch(() => null)) return go({ at: 'shelf' }, { replace: true });
          setFault(troubleText(reason));
        },
      );
  }, [token]);
  return (
    <main className="doorstep">
      <h1>{words.name}</h1>
      <p role="status">{fault ?? (token ? words.signIn.coming : words.signIn.ask)}</p>
    </main>
  );
}
