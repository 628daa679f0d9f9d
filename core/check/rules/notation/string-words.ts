import type { BowEvent, Voice } from '../../../bowing/events.ts';
import { canSoundOn, openStringAt } from '../../../hand/place.ts';
import type { StringNumber } from '../../../instruments/instrument.ts';
import { quarters } from '../../../music/time.ts';
import { bySeats } from '../../bySeats.ts';
import { type CheckContext, soundingOf } from '../../context.ts';
import { exposureAt } from '../../exposure.ts';
import { defineRule } from '../../rule.ts';
import type { NoteMarks } from '../../seatMarks.ts';
import { stringWord, type StringWord } from '../../stringWords.ts';
import { stringNumeral } from '../../words.ts';

interface Instruction {
  from: number;
  staff: number | undefined;
  word: StringWord;
}

/** Notes an instruction is read to hold for when nothing ends it, and the silence that ends it, in quarters. Chosen, not measured. */
const HOLDS_FOR = 16;
const ENDED_BY_REST = 1;

const instructionsIn = (part: CheckContext): Instruction[] =>
  part.part.measures.flatMap(({ start, words }) =>
    words.flatMap(({ text, at, staff }) => {
      const word = stringWord(part.instrument, text);
      return word ? [{ from: quarters(start) + quarters(at), staff, word }] : [];
    }),
  );

/** The notes of a voice over which words keep a string in force. */
function underWords(part: CheckContext, voice: Voice, instructions: readonly Instruction[]): { event: BowEvent; string: StringNumber }[] {
  const own = instructions.filter(({ staff }) => staff === undefined || staff === (voice[0]?.head.staff ?? 1));
  let [next, left, string] = [0, 0, 1 as StringNumber];
  return voice.flatMap((event, at) => {
    const before = voice[at - 1];
    if (before && event.from - before.to >= ENDED_BY_REST) left = 0;
    for (; next < own.length && own[next]!.from <= event.from + 1e-6; next++) {
      const { word } = own[next]!;
      left = word.kind === 'ends' ? 0 : word.once ? 1 : HOLDS_FOR;
      if (word.kind === 'string') string = word.string;
    }
    const midi = soundingOf(event);
    if (event.head.pizzicato || midi === undefined || (!canSoundOn(part.instrument, string, midi) && !event.head.technical.some(({ name }) => name === 'harmonic'))) left = 0;
    return left-- > 0 ? [{ event, string }] : [];
  });
}

/** The string a mark asks for against the words; null where it agrees or says nothing. */
function against({ string, finger, harmonic }: NoteMarks, open: StringNumber | null, words: StringNumber): StringNumber | null {
  if (harmonic && string === undefined) return null;
  const asked = string ?? (finger === 0 ? open : null);
  return asked === words ? null : asked;
}

export default defineRule({
  id: 'notation/string-words',
  severity: 'worthALook',
  summary: 'Strings that are marked agree with words like sul G that are in force.',
  why: 'The words promise one colour, the mark asks for another, and a section that reads both plays both. Words are read to hold to the next such words, a rest of a beat, a note the string has not, or for sixteen notes.',
  source: ['common-practice', 'chosen'],
  messages: {
    other: 'In {where} {pitch} is marked for string {string} ({who}), while the words over the passage ask for string {words}. Write where the words end, or give the note that string.',
  },
  check(part, report) {
    const instructions = instructionsIn(part);
    if (!instructions.length) return;
    for (const { event, string: words } of part.voices.flatMap((voice) => underWords(part, voice, instructions))) {
      const { id, pitch, dynamic } = event.head;
      if (!pitch || event.notes.length > 1) continue;
      const open = openStringAt(part.instrument, soundingOf(event)!);
      for (const { value, seats } of bySeats(part.groups, ({ marksOn }) => against(marksOn(id), open, words))) {
        report({ message: 'other', measure: event.measure, notes: [id], seats, exposure: exposureAt(dynamic, part.settings.assumedDynamic), place: `${id}/${value}`, facts: { pitch: { pitch }, string: stringNumeral(value), words: stringNumeral(words) } });
      }
    }
  },
});
