import type { ReactNode } from 'react';
import { isUnderWay, type ImportView } from '../../../../core/agreement/wire/imports.ts';
import { Refused, troubleText } from '../../../library/http.ts';
import { words } from '../../../words/words.ts';
import { GrowingStaff } from '../GrowingStaff.tsx';
import { filesOf, importSentence } from './importSentence.ts';

/** What each of several files came to, where not all were taken. */
function Report({ files }: Pick<ImportView, 'files'>): ReactNode {
  return (
    <ul>
      {files.map(({ fileName, step, parts, trouble }, index) => (
        <li key={index} className={step}>
          <b>{fileName}</b> <span>{trouble ? troubleText(new Refused(trouble, 422)) : words.imports.wouldLie(parts)}</span>
        </li>
      ))}
    </ul>
  );
}

function Row({ view, onLeave }: { view: ImportView; onLeave(view: ImportView): void }): ReactNode {
  const underWay = isUnderWay(view);
  const severalRefused = view.step === 'refused' && view.files.length > 1;
  return (
    <li className="import">
      <div className="asking">
        <p>{severalRefused ? words.imports.noneOf(view.files.length) : importSentence(view)}</p>
        {underWay ? <GrowingStaff done={view.done} of={view.of} label={words.imports.picture(view.done, view.of)} /> : null}
        <button type="button" onClick={() => onLeave(view)}>
          {underWay ? words.imports.stop : words.imports.putAway}
          <span className="offstage"> {filesOf(view)}</span>
        </button>
      </div>
      {severalRefused ? <Report files={view.files} /> : null}
    </li>
  );
}

/** Scores on their way into this folder, and those that could not be laid in it, with why. */
export function Imports({ views, onLeave }: { views: readonly ImportView[]; onLeave(view: ImportView): void }): ReactNode {
  const shown = views.filter((view) => isUnderWay(view) || view.step === 'refused');
  if (shown.length === 0) return null;
  return (
    <section className="imports" aria-labelledby="imports">
      <h2 id="imports">{words.imports.title}</h2>
      <ul>
        {shown.map((view) => (
          <Row key={view.id} view={view} onLeave={onLeave} />
        ))}
      </ul>
    </section>
  );
}
