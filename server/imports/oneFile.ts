import type { Part } from '../../core/music/part.ts';
import type { StoredPart } from '../store/library.ts';

const isSame = (stored: Part, part: Part): boolean => stored.id === part.id && stored.instrument === part.instrument;
const isCalled = (stored: Part, part: Part): boolean => stored.name === part.name || stored.name.startsWith(`${part.name} (`);

/**
 * Where a work lies in several files, the parts that a corrected file is about: those of the file it has most in common with, by name of part. Its parts take the
 * names they have in the work, where they may carry their movement.
 * A work in one file, and a file with every part of the work, are left as they are.
 */
export function partsOfFile(stored: readonly StoredPart[], parts: readonly Part[], movement: string): { stored: StoredPart[]; parts: Part[] } {
  const editions = [...new Set(stored.map(({ edition }) => edition))];
  const isWhole = stored.every(({ content }) => parts.some((part) => part.name === content.name));
  if (editions.length < 2 || isWhole) return { stored: [...stored], parts: [...parts] };
  const alike = (edition: string): number =>
    stored.filter((one) => one.edition === edition).reduce((sum, { content }) => sum + (parts.some((part) => isCalled(content, part)) ? 2 : 0) + (content.name.endsWith(`(${movement})`) ? 1 : 0), 0);
  const best = editions.toSorted((a, b) => alike(b) - alike(a))[0]!;
  const those = stored.filter(({ edition }) => edition === best);
  const named = (part: Part): Part => ({ ...part, name: (those.find(({ content }) => isSame(content, part) && isCalled(content, part)) ?? those.find(({ content }) => isCalled(content, part)))?.content.name ?? part.name });
  return { stored: those, parts: parts.map(named) };
}
