import { z } from 'zod';
import { BOW_LIMIT, DYNAMICS } from '../bowing/bowLength.ts';
import { RETAKE_REST } from '../bowing/strokes.ts';
import { OPEN_STRINGS } from '../fingering/aims.ts';

const seconds = (value: number, text: string) => z.number().min(0).max(120).default(value).describe(text);
const count = (value: number, text: string) => z.int().min(0).max(1000).default(value).describe(text);

/**
 * What a section may set for itself. Every number is chosen, not measured, unless its text names a source; the defaults keep real parts quiet.
 * Unknown keys are left to others.
 */
export const CheckSettings = z.object({
  assumedTempo: z.number().min(10).max(400).default(90).describe('Quarter notes a minute where the part gives no tempo.'),
  assumedDynamic: z.enum(DYNAMICS).default('mf').describe('Dynamic where the part gives none yet.'),
  lowestString: z.int().min(12).max(60).nullable().default(null).describe('MIDI key of the lowest open string, where it is not the usual one: 24 for a bass with C extension.'),
  bowSeconds: z
    .object(Object.fromEntries(DYNAMICS.map((dynamic) => [dynamic, seconds(BOW_LIMIT[dynamic], `Seconds after which a violin's bow is used up at ${dynamic}.`).refine((value) => value > 0, 'A bow lasts more than 0 seconds')])) as Record<(typeof DYNAMICS)[number], z.ZodDefault<z.ZodNumber>>)
    .prefault({})
    .describe('How long one bow lasts; violas, cellos and basses take their share of it.'),
  bowsBeforeSpeaking: z.number().min(1).max(20).default(1).describe('Bows a slur or held note may need before it is pointed out.'),
  bowsOutOfReach: z.number().min(1).max(20).default(4).describe('Bows from which a slur cannot be played as written at its dynamic.'),
  retakeRest: seconds(RETAKE_REST, 'Silence that leaves time to bring the bow back without a sign.'),
  retakeTime: seconds(0.2, 'Time from the start of a bow to a retake after it, below which the retake is pointed out.'),
  hookRest: seconds(1, 'Silence across which a hook still belongs to the bow before or after it.'),
  pizzTime: seconds(0.25, 'Time from a bowed note to a plucked one, or back, below which the change is pointed out.'),
  muteTime: seconds(1.5, 'Silence in which a whole section puts its mutes on or takes them off.'),
  strokesCounted: count(6, 'Unmarked bows between two signs across which down and up are still counted.'),
  partnersApart: seconds(0.5, 'Desk partners change bow at least this far apart in a staggered passage.'),
  partnersSubdivision: z.number().min(0).max(4).default(0.5).describe('Desk partners do not change in the same stretch of this many quarters, counted from the barline.'),
  togetherWithin: seconds(0.25, 'Bow changes closer than this are heard as one.'),
  togetherShare: z.number().gt(0).max(1).default(1 / 8).describe('Share of the section that may change bow at once in a staggered passage; one player always may.'),
  shiftScore: z.number().min(0).max(1000).default(6).describe('How exposed a shift of both desk partners must be to be pointed out.'),
  shiftsAtMost: z.number().min(0).max(100).default(2).describe('Shifts of desk partners pointed out per 100 measures, most exposed first; three always may be.'),
  shiftLoad: z.number().min(0.2).max(5).default(1).describe('Share of the time between two onsets that a shift may need before it is pointed out; 1 is all of it.'),
  slideHeard: z.number().min(0).max(1).default(0.9).describe('How audible a slide of the whole section must be to be pointed out, 0 to 1; 0.5 is the threshold of hearing.'),
  slidesAtMost: z.number().min(0).max(100).default(1).describe('Audible slides pointed out per 100 measures, worst first; one always may be.'),
  openStrings: z.enum(OPEN_STRINGS).default('free').describe('What the section has settled about open strings: free, avoided or wanted.'),
  openStringFrom: seconds(0.4, 'A note this long counts as one on which an open string is heard.'),
  unisonNotes: z.int().min(2).max(200).default(6).describe('Notes two sections must play in unison before their bows are compared.'),
  rhythmNotes: z.int().min(4).max(400).default(16).describe('Notes two sections must play in one rhythm with the same slurs, on other pitches, before their bows are compared.'),
  bassesMayReverse: z.boolean().default(false).describe('Double basses may bow the other way than cellos in unison.'),
  sameMusicNotes: z.int().min(5).max(200).default(12).describe('Notes a passage must share with another before their fingers and bows are compared.'),
});
export type CheckSettings = z.infer<typeof CheckSettings>;
