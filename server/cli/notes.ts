import { realign } from '../../core/matching/editions/realign.ts';
import type { Note, Part } from '../../core/music/part.ts';
import { readArguments, required } from './arguments.ts';
import { BadInput, type Command } from './command.ts';
import { printJson } from './output.ts';
import { openScore, partOf } from './scoreFile.ts';

export const notes: Command = {
  name: 'notes',
  usage: 'FILE --part ID [--measures A-B] [--previous FILE]',
  summary: 'Lists the notes of a part with their ids; --previous carries the ids of an earlier edition over.',
  async run(args) {
    const { file, options } = readArguments(notes, args, ['part', 'measures', 'previous']);
    const id = required(notes, options, 'part');
    let { part } = partOf(await openScore(file), id);
    if (options.previous !== undefined) part = realign(part, partOf(await openScore(options.previous), id).part).part;
    const [from, to] = range(options.measures, part);
    const measures = part.measures.slice(from - 1, to).map(({ ordinal, number, notes: list }) => ({ ordinal, number, notes: list.map(shown) }));
    await printJson({ measures });
    return 0;
  },
};

function shown({ id, rest, grace, chord, hidden, pitch, midi, onset, duration, voice, slurs, ties, technical }: Note): Partial<Note> {
  return {
    id,
    ...(rest ? { rest } : {}),
    ...(grace ? { grace } : {}),
    ...(chord ? { chord } : {}),
    ...(hidden ? { hidden } : {}),
    ...(pitch ? { pitch } : {}),
    ...(midi === undefined ? {} : { midi }),
    onset,
    duration,
    voice,
    slurs,
    ties,
    technical,
  };
}

function range(text: string | undefined, part: Part): [number, number] {
  if (text === undefined) return [1, part.measures.length];
  const match = /^(\d+)(?:-(\d+))?$/.exec(text);
  const from = Number(match?.[1]);
  const to = Number(match?.[2] ?? from);
  if (!match || from < 1 || to < from || to > part.measures.length) throw new BadInput(`--measures "${text}" should be like 3-8, within 1-${part.measures.length} (measures counted from the first, whatever is printed).`);
  return [from, to];
}
