import type { Part } from '../../core/music/part.ts';
import type { ReadFile } from './readFiles.ts';

/** How a movement is called by its file. Example: "suite-2.mxl" is "suite-2". */
export const movementOf = (fileName: string): string => fileName.replace(/\.\w+$/, '');

/** What all titles begin with, up to a comma between what a work and its movement are called. */
function begun(titles: readonly string[]): string {
  const first = titles[0]!.split(', ');
  let same = first.length;
  while (same > 0 && !titles.every((title) => title === first.slice(0, same).join(', ') || title.startsWith(`${first.slice(0, same).join(', ')}, `))) same--;
  return first.slice(0, same).join(', ');
}

/** How the work is called that lies in these files. Example: "Suite, Prelude" and "Suite, Gigue" are "Suite". */
export function workTitle(files: readonly ReadFile[]): string {
  return begun(files.map(({ score }) => score.title)) || files[0]!.score.title || movementOf(files[0]!.edition.fileName);
}

/** How the movement in a file is called beside the others: by its title where that tells it from them, else by its file. */
function movementName(file: ReadFile, files: readonly ReadFile[]): string {
  const own = file.score.title.slice(begun(files.map(({ score }) => score.title)).length).replace(/^, /, '');
  const alone = files.filter(({ score }) => score.title === file.score.title).length === 1;
  return own && alone ? own : movementOf(file.edition.fileName);
}

/** Parts of several files in one work: a part whose name is taken carries its movement too, "Violin I (Gigue)". `taken` are names the work has already. */
export function namedApart(files: readonly ReadFile[], taken: readonly string[] = []): ReadFile[] {
  const all = [...taken, ...files.flatMap(({ parts }) => [...new Set(parts.map(({ name }) => name))])];
  const twice = (name: string) => all.filter((other) => other === name).length > 1;
  return files.map((file) => ({ ...file, parts: file.parts.map((part): Part => (twice(part.name) ? { ...part, name: `${part.name} (${movementName(file, files)})` } : part)) }));
}
