import type { Part } from '../../core/music/part.ts';
import type { StoredPart } from '../store/library.ts';

const isCalled = (stored: Part, part: Part): boolean => stored.name === part.name || stored.name.startsWith(`${part.name} (`);

/**
 * What a corrected file is about: all parts of the work, or where the work lies in several files and this one has not all of its parts, those of the file it has most
 * in common with, by name of part. Its parts take the names they have in the work, where they may carry their movement, and the instrument the librarian gave them.
 */
export function partsOfFile(stored: readonly StoredPart[], parts: readonly Part[], movement: string): { stored: StoredPart[]; parts: Part[] } {
  const isWhole = stored.every(({ content }) => parts.some((part) => part.name === content.name));
  const editions = isWhole ? [] : [...new Set(stored.map(({ edition }) => edition))];
  const alike = (edition: string): number =>
    stored.filter((one) => one.edition === edition).reduce((sum, { content }) => sum + (parts.some((part) => isCalled(content, part)) ? 2 : 0) + (content.name.endsWith(`(${movement})`) ? 1 : 0), 0);
  const best = editions.toSorted((a, b) => alike(b) - alike(a))[0];
  const those = stored.filter(({ edition }) => best === undefined || edition === best);
  return { stored: those, parts: parts.map((part) => asStored(part, those)) };
}

function asStored(part: Part, stored: readonly StoredPart[]): Part {
  const called = stored.filter(({ content }) => isCalled(content, part));
  const match = (called.find(({ content }) => content.id === part.id) ?? called[0])?.content;
  return match ? { ...part, name: match.name, instrument: match.instrument } : part;
}
