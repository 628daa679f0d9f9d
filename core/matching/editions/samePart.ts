import type { Part } from '../../music/part.ts';

/**
 * The part of a newer edition that a part of an older one is: of its name and id, else of its name, else of its id; always of its instrument where the name
 * differs. undefined where there is none. Example: "Violin I" is found again though the file now calls it P3.
 */
export function samePart(part: Part, among: readonly Part[]): Part | undefined {
  const { id, name, instrument } = part;
  return among.find((other) => other.id === id && other.name === name) ?? among.find((other) => other.name === name && other.instrument === instrument) ?? among.find((other) => other.id === id && other.instrument === instrument) ?? among.find((other) => other.name === name);
}
