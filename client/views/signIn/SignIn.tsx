import { useEffect, useRef, useState, type ReactNode } from 'react';
import { getJson, Refused, troubleText } from '../../library/http.ts';
import { clearDesk } from '../../library/leave.ts';
import { confirmAddress, enterWithLink, fetchWays, inWords, whoIsHere } from '../../library/signIn.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { go, type Place } from '../../router.ts';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { words } from '../../words/words.ts';
import { Languages } from '../shelf/Languages.tsx';
import { Door } from './Door.tsx';
import { Invited } from './Invited.tsx';

const toShelf = () => go({ at: 'shelf' }, { replace: true });
const cameIn = () => clearDesk().then(toShelf);

/** What to do at once with what the address brings. A link is sent by the page, so that a preview of it does not use it up. */
async function arrive({ token, came, confirm }: Arrival): Promise<string | null> {
  // It is nobody's business afterwards: not the history's, not the next page's.
  if (token || confirm) history.replaceState(null, '', '/sign-in');
  if (came) return cameIn().then(() => null);
  if (confirm) return confirmAddress(confirm).then(() => words.signIn.confirmed);
  if (!token) return null;
  try {
    await enterWithLink(token);
  } catch (fault) {
    // Who is signed in already and follows the old link from a letter is shown in.
    if (!(await getJson('/me').catch(() => null))) throw fault;
    toShelf();
    return null;
  }
  return cameIn().then(() => null);
}

const invitation = (here: string | null, identity: string | null): string => (here === null ? words.signIn.invited(identity!) : words.signIn.invitedHere(here));

type Arrival = Extract<Place, { at: 'signIn' }>;

/** The door: a link, an address and a password, a link by letter, the orchestra's own sign-in. */
export function SignIn({ place: given }: { place: Arrival }): ReactNode {
  const [place] = useState(given);
  const { value: ways, fault: unreached } = useLoaded('ways', fetchWays);
  const invited = Boolean(place.token && place.invited);
  const { value: asked } = useLoaded('here', async () => ({ here: invited ? await whoIsHere() : null }));
  const here = asked?.here ?? null;
  const [said, setSaid] = useState<string | null>(place.trouble ? (words.signIn.troubles[place.trouble] ?? null) : null);
  const waits = invited && (!asked || (!ways && !unreached));
  const choosing = invited && !waits && Boolean(ways?.identity || here);
  const sent = useRef(false);
  useEffect(() => {
    if (choosing || waits || sent.current) return;
    sent.current = true;
    arrive(place).then(
      (sentence) => sentence && setSaid(sentence),
      (fault: unknown) => setSaid(place.confirm && fault instanceof Refused && fault.status === 401 ? words.signIn.signInFirst : troubleText(inWords(fault))),
    );
  }, [choosing, waits, place]);
  const coming = (place.token !== null && !choosing) || place.came === true;
  const status = said ?? (coming ? words.signIn.coming : place.confirm ? words.signIn.confirming : choosing ? invitation(here, ways?.identity ?? null) : words.signIn.ask);
  const confirmed = said === words.signIn.confirmed;
  return (
    <main className="doorstep">
      <h1>{words.name}</h1>
      <p role="status">{status}</p>
      {choosing ? <Invited token={place.token!} identity={ways?.identity ?? null} here={here} say={setSaid} /> : null}
      {confirmed ? (
        <p>
          <PlaceLink to={{ at: 'shelf' }}>{words.signIn.toShelf}</PlaceLink>
        </p>
      ) : (coming && !said) || choosing || (place.confirm && !said) ? null : (
        <Door ways={ways} say={setSaid} cameIn={cameIn} />
      )}
      <Languages act={(work) => work().catch((fault: unknown) => setSaid(troubleText(fault)))} />
    </main>
  );
}
