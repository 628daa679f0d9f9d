import type { ImportView } from '../../../../core/agreement/wire/imports.ts';
import { Refused, troubleText } from '../../../library/http.ts';
import { words } from '../../../words/words.ts';

/** The files of an import in a few words: the name of one, the number of several. */
export const filesOf = ({ files }: Pick<ImportView, 'files'>): string => (files.length === 1 ? files[0]!.fileName : words.imports.files(files.length));

/** How far an import is, or what it came to. */
export function importSentence(view: ImportView): string {
  const { kind, step, files, answer, trouble } = view;
  const name = filesOf(view);
  if (step === 'done' && answer) {
    const { work, notes } = answer;
    return kind === 'work' ? words.score.laid(work.title, work.parts.length) : kind === 'parts' ? words.imports.added(work.title, work.parts.length) : words.score.corrected(notes.kept, notes.added, notes.removed);
  }
  if (step === 'stopped') return words.imports.stopped(name);
  if (step === 'refused') return (files.length === 1 ? words.score.notLaid(name) : `${words.imports.noneOf(files.length)} `) + (trouble ? troubleText(new Refused(trouble, 422)) : '');
  if (step === 'waiting') return words.imports.turn(name);
  if (step === 'laying') return kind === 'edition' ? words.imports.aligning(name) : words.imports.placing(name);
  if (step === 'keeping') return words.imports.keeping(name);
  const at = files.find((file) => file.step === 'unpacking' || file.step === 'reading') ?? files[0]!;
  return at.step === 'unpacking' ? words.imports.unpacking(at.fileName) : words.score.reading(at.fileName);
}
