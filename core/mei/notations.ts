/** What hangs on one note, as MusicXML writes it. */
export interface Hung {
  ties: Set<'start' | 'stop'>;
  slurs: { type: 'start' | 'stop'; number: number }[];
  slides: { type: 'start' | 'stop'; number: number }[];
  technical: string[];
  articulations: string[];
  ornaments: string[];
  fermata: boolean;
  arpeggio: boolean;
}

export const nothingHung = (): Hung => ({ ties: new Set(), slurs: [], slides: [], technical: [], articulations: [], ornaments: [], fermata: false, arpeggio: false });

const ARTICULATIONS: Record<string, string> = { acc: 'accent', stacc: 'staccato', ten: 'tenuto', stacciss: 'staccatissimo', marc: 'strong-accent', spicc: 'spiccato', 'ten-stacc': 'detached-legato', stress: 'stress', unstress: 'unstress', doit: 'doit', scoop: 'scoop', plop: 'plop', fall: 'falloff' };
const TECHNICAL: Record<string, string> = { dnbow: '<down-bow placement="above"/>', upbow: '<up-bow placement="above"/>', harm: '<harmonic/>', snap: '<snap-pizzicato/>', open: '<open-string/>', stop: '<stopped/>', lhpizz: '<stopped/>', dbltongue: '<double-tongue/>', trpltongue: '<triple-tongue/>' };

/** Adds MEI's articulations, several in one attribute. Names this reader does not know are left out. */
export function addArticulations(hung: Hung, artic: string): void {
  for (const name of artic.split(/\s+/).filter(Boolean)) {
    if (ARTICULATIONS[name]) hung.articulations.push(`<${ARTICULATIONS[name]}/>`);
    else if (TECHNICAL[name]) hung.technical.push(TECHNICAL[name]);
  }
}

const group = (name: string, inside: readonly string[]): string => (inside.length ? `<${name}>${inside.join('')}</${name}>` : '');

/** The `<notations>` of a note, or nothing. `extra` comes first: tuplets and tremolos of its layer. */
export function notationsXml(hung: Hung, extra: { tuplets: readonly string[]; ornaments: readonly string[] }): string {
  const ties = [...hung.ties].map((type) => `<tied type="${type}"/>`);
  const slurs = hung.slurs.map(({ type, number }) => `<slur type="${type}" number="${number}"/>`);
  const slides = hung.slides.map(({ type, number }) => `<slide type="${type}" number="${number}"/>`);
  return group('notations', [
    ...ties,
    ...slurs,
    ...extra.tuplets,
    ...slides,
    group('ornaments', [...extra.ornaments, ...hung.ornaments]),
    group('technical', hung.technical),
    group('articulations', hung.articulations),
    hung.fermata ? '<fermata/>' : '',
    hung.arpeggio ? '<arpeggiate/>' : '',
  ].filter(Boolean));
}
