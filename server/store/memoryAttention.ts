import type { Attention } from './attention.ts';
import type { Shelves } from './shelves.ts';

export function createMemoryAttention({ attention, letters, people, parts }: Shelves): Attention {
  function raise(person: string, part: string, by: { seen?: number; told?: number }): void {
    const mine = attention.get(person) ?? new Map<string, { seen: number; told: number }>();
    const before = mine.get(part) ?? { seen: 0, told: 0 };
    mine.set(part, { seen: Math.max(before.seen, by.seen ?? 0), told: Math.max(before.told, by.told ?? 0) });
    attention.set(person, mine);
  }
  return {
    seen: async (person) => new Map([...(attention.get(person) ?? [])].map(([part, { seen }]) => [part, seen])),
    async see(person, part, seq) {
      if (!parts.has(part)) return false;
      raise(person, part, { seen: seq });
      return true;
    },
    async letters(person) {
      const wish = letters.get(person);
      return wish ? { address: wish.address, language: wish.language } : null;
    },
    async setLetters(person, wish) {
      if (wish) letters.set(person, { ...(letters.get(person) ?? { sentAt: null, remindedAt: null }), ...wish });
      else letters.delete(person);
    },
    correspondents: async () =>
      [...letters].filter(([person]) => people.has(person)).map(([person, wish]) => ({ ...wish, person, name: people.get(person)!.name, known: new Map([...(attention.get(person) ?? [])].map(([part, { seen, told }]) => [part, Math.max(seen, told)])) })),
    async tell(person, told, times) {
      for (const [part, seq] of told) raise(person, part, { told: seq });
      const wish = letters.get(person);
      if (wish) letters.set(person, { ...wish, ...times });
    },
  };
}
