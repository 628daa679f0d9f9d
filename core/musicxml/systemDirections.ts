import { childrenNamed, type XmlElement } from './element.ts';
import { splice } from './splice.ts';

type Kind = 'rehearsal' | 'tempo';

/**
 * Text of the rehearsal and tempo directions that another part has at the start of a measure and this one lacks. A full score writes them once,
 * above its first part; a player's part needs them.
 */
export function borrowedDirections(text: string, content: XmlElement | undefined, others: readonly (XmlElement | undefined)[]): string {
  const missing = new Set<Kind>(['rehearsal', 'tempo']);
  for (const direction of content ? directionsAtStart(content) : []) for (const kind of kindsOf(direction)) missing.delete(kind);
  const borrowed: string[] = [];
  for (const other of others) {
    if (!other || !missing.size) continue;
    const found = new Set<Kind>();
    for (const direction of directionsAtStart(other)) {
      const kinds = kindsOf(direction);
      if (!kinds.length || !kinds.every((kind) => missing.has(kind))) continue;
      kinds.forEach((kind) => found.add(kind));
      borrowed.push(copied(text, direction));
    }
    for (const kind of found) missing.delete(kind);
  }
  return borrowed.join('');
}

function directionsAtStart(content: XmlElement): XmlElement[] {
  const timed = content.children.findIndex(({ name }) => name === 'note' || name === 'forward');
  return (timed < 0 ? content.children : content.children.slice(0, timed)).filter(({ name }) => name === 'direction');
}

function kindsOf(direction: XmlElement): Kind[] {
  const shown = childrenNamed(direction, 'direction-type').flatMap(({ children }) => children.map(({ name }) => name));
  const kinds: Kind[] = [];
  if (shown.includes('rehearsal')) kinds.push('rehearsal');
  if (shown.includes('metronome') || (shown.includes('words') && childrenNamed(direction, 'sound').some(({ attributes }) => attributes.tempo !== undefined))) kinds.push('tempo');
  return kinds;
}

/** Without what ties it to a voice or staff of the other part, and without ids. */
function copied(text: string, direction: XmlElement): string {
  const tied = direction.children.filter(({ name }) => name === 'staff' || name === 'voice');
  const without = splice(text, tied.map(({ start, end }) => ({ start, end, text: '' })), direction.start, direction.end);
  return without.replace(/(<[^<>]*?)\sid\s*=\s*("[^"]*"|'[^']*')/g, '$1');
}
