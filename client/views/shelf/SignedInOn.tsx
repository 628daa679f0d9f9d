import type { ReactNode } from 'react';
import type { SessionView } from '../../../core/agreement/wire/signIn.ts';
import { clearDesk } from '../../library/leave.ts';
import { endOtherSessions, endSession } from '../../library/signIn.ts';
import { go } from '../../router.ts';
import { languageNow } from '../../words/language.ts';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';

const named = ({ browser, device }: SessionView): string => words.mySignIn.on(browser === 'other' ? words.mySignIn.unknownBrowser : browser, words.mySignIn.devices[device]);

function hour(iso: string): string {
  const language = languageNow();
  return `${words.day(iso)}, ${new Date(iso).toLocaleTimeString(language === 'en' ? 'en-GB' : language, { hour: '2-digit', minute: '2-digit' })}`;
}

/** Where one is signed in; any can be ended from any. */
export function SignedInOn({ sessions, act }: { sessions: readonly SessionView[]; act: Act }): ReactNode {
  const end = (one: SessionView) =>
    act(async () => {
      const { signedOut } = await endSession(one.id);
      if (!signedOut) return words.mySignIn.ended;
      await clearDesk();
      go({ at: 'signIn', token: null });
      return null;
    });
  const endOthers = () => act(async () => endOtherSessions().then(() => words.mySignIn.othersEnded));
  return (
    <div className="signed-in-on">
      <h3>{words.mySignIn.where}</h3>
      <ul>
        {sessions.map((one) => (
          <li key={one.id}>
            <p>
              <b>{named(one)}</b> {words.mySignIn.ways[one.way]} {one.here ? <em>{words.mySignIn.here}</em> : null}
              <span>{words.mySignIn.times(words.day(one.begun), hour(one.used))}</span>
            </p>
            <button type="button" aria-label={`${words.mySignIn.end}: ${named(one)}${one.here ? `, ${words.mySignIn.here}` : ''}`} onClick={() => void end(one)}>
              {words.mySignIn.end}
            </button>
          </li>
        ))}
      </ul>
      {sessions.length > 1 ? (
        <button type="button" onClick={() => void endOthers()}>
          {words.mySignIn.endOthers}
        </button>
      ) : null}
    </div>
  );
}
