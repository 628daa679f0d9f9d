const MEASURE = /<measure\b[^>]*\bid="m(\d+)"[^>]*>([\s\S]*?)<\/measure>/g;
const SAID = /<measure-style\b[^>]*>\s*<multiple-rest\b[^>]*>[\s\S]*?<\/multiple-rest>\s*<\/measure-style>/g;
/** Only rests, without a fermata or anything else on them. */
const SILENT = /^(?:\s|<note\b[^>]*>\s*<rest\b[^>]*(?:\/>|>[\s\S]*?<\/rest>)(?:(?!<notations|<lyric|<\/note>)[\s\S])*<\/note>|<(backup|forward)>[\s\S]*?<\/\1>)+$/;
/** What may stand before the first rest: signs that hold for all of it, words, a letter, a barline on the left. */
const BEFORE = /^(?:\s|<attributes\b[^>]*>[\s\S]*?<\/attributes>|<direction\b[^>]*>[\s\S]*?<\/direction>|<sound\b[^>]*\/>|<barline location="left"[^>]*>[\s\S]*?<\/barline>)+/;

/** A barline of its own kind, which a rest may end at. */
const AT_END = /<barline(?: location="right")?>(?:(?!<\/barline>)[\s\S])*<\/barline>\s*$/;

const isSilent = (content: string): boolean => SILENT.test(content);
const beginsSilence = (content: string): boolean => isSilent(content.replace(BEFORE, ''));
/** The barline at the end of a measure of rest; null where it has none or sounds. */
const barlineEnding = (content: string): string | null => {
  const barline = AT_END.exec(content)?.[0];
  return barline && isSilent(content.replace(AT_END, '')) ? barline : null;
};

const DURATION = /<(note|forward|backup)\b[^>]*>(?:(?!<\/\1>)[\s\S])*?<duration>\s*([\d.]+)\s*<\/duration>/g;
/** How long a measure of rest is, in its own divisions: what is left of one beside a repeat is not counted as a whole one. */
const lengthOf = (content: string): number => [...content.matchAll(DURATION)].reduce((sum, [, name, duration]) => sum + (name === 'backup' ? -Number(duration) : Number(duration)), 0);

export interface Rested {
  text: string;
  /** How many measures a rest counts, by the measure it begins in. */
  spans: ReadonlyMap<number, number>;
}

/**
 * Measures of rest after one another written as one counted rest, as parts are printed, in an engraver's text of one part. What changes
 * (a letter, a key, a tempo, a barline) ends a rest, so that it is seen where it comes. Source: Gould, Behind Bars, on bars' rest; from memory.
 */
export function countRests(text: string): Rested {
  const plain = text.replace(SAID, '');
  const measures = [...plain.matchAll(MEASURE)].map(([whole, ordinal, content]) => ({ whole: whole!, ordinal: Number(ordinal), content: content! }));
  const spans = new Map<number, number>();
  const barlines = new Map<number, string>();
  for (let i = 0; i < measures.length; i += 1) {
    if (!beginsSilence(measures[i]!.content)) continue;
    let count = 1;
    const { content: first } = measures[i]!;
    const goesOn = (at: number): boolean => at < measures.length && lengthOf(measures[at]!.content) === lengthOf(first);
    while (goesOn(i + count) && isSilent(measures[i + count]!.content)) count += 1;
    const barline = goesOn(i + count) ? barlineEnding(measures[i + count]!.content) : null;
    if (barline) {
      barlines.set(measures[i]!.ordinal, barline);
      count += 1;
    }
    if (count > 1) spans.set(measures[i]!.ordinal, count);
    i += count - 1;
  }
  // The engraver passes over the measures that are counted, so that the last one's barline goes to the first.
  const counted = plain.replace(MEASURE, (whole, ordinal: string) => {
    const count = spans.get(Number(ordinal));
    if (!count) return whole;
    return whole.replace('<note', `<attributes><measure-style><multiple-rest>${count}</multiple-rest></measure-style></attributes><note`).replace(/<\/measure>$/, `${barlines.get(Number(ordinal)) ?? ''}</measure>`);
  });
  return { text: counted, spans };
}
