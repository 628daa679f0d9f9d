const OFF = /(?<!\p{L})(?:senza\s+sord|ohne\s+d[äa]mpf|sans\s+sourd|[ôo]te[zr]\s+(?:la\s+|les\s+)?sourd|via\s+sord|d[äa]mpfer\s+(?:weg|ab)|mutes?\s+off|remove\s+mutes?|without\s+mutes?)/iu;
const ON = /(?<!\p{L})(?:sord(?:\.|ino|ini|ina|ine)?(?!\p{L})|mit\s+d[äa]mpfe|d[äa]mpfer\s+auf|sourdines?(?!\p{L})|mutes?\s+on|with\s+mutes?|muted)/iu;

/**
 * What a text says about mutes, in Italian, German, French or English: true for on, false for off, null where it says nothing.
 * Wordings: common practice, no source. Example: "con sord." is true, "ôtez la sourdine" false.
 */
export function muteWord(text: string): boolean | null {
  if (OFF.test(text)) return false;
  return ON.test(text) ? true : null;
}
