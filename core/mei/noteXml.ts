import type { XmlElement } from '../musicxml/element.ts';
import { divisionsOf } from './divisions.ts';
import type { LayerEvent } from './layer.ts';
import { addArticulations, type Hung, nothingHung, notationsXml } from './notations.ts';
import type { Spelling } from './pitches.ts';
import { shown } from './shown.ts';

export interface NoteSetting {
  voice: string;
  spelling: Spelling;
  hungOn(element: XmlElement): Hung | undefined;
}

const tuplets = ({ tupletEdge }: LayerEvent): string[] => tupletEdge.map((type) => `<tuplet type="${type}"/>`);

function tremolo({ tremolo: signs }: LayerEvent): string[] {
  if (!signs) return [];
  return [`<tremolo type="${signs.pair ?? 'single'}">${Math.min(8, signs.strokes)}</tremolo>`];
}

function shape(event: LayerEvent): string {
  const { value, dots, tuplet, tremolo: signs } = event;
  const ratio = tuplet ? [tuplet.num, tuplet.numbase] : signs?.pair ? [2, 1] : null;
  const modified = ratio ? `<time-modification><actual-notes>${ratio[0]}</actual-notes><normal-notes>${ratio[1]}</normal-notes></time-modification>` : '';
  return `${value ? `<type>${value.type}</type>` : ''}${'<dot/>'.repeat(dots)}%accidental%${modified}${event.beam ? `<beam number="1">${event.beam}</beam>` : ''}`;
}

/** Own articulations of a note or of the chord it stands in, and what the measure's signs hang on it. */
function hungOn(element: XmlElement, chord: XmlElement | null, setting: NoteSetting): Hung {
  const known = setting.hungOn(element);
  const hung: Hung = known ? { ...known, ties: new Set(known.ties), articulations: [...known.articulations], technical: [...known.technical] } : nothingHung();
  for (const owner of chord ? [chord, element] : [element]) {
    if (owner.attributes.artic) addArticulations(hung, owner.attributes.artic);
    for (const child of shown(owner)) if (child.name === 'artic' && child.attributes.artic) addArticulations(hung, child.attributes.artic);
    if (owner.attributes.fermata) hung.fermata = true;
    const tie = owner.attributes.tie ?? '';
    if (/[it]/.test(tie) || tie.includes('m')) {
      if (/[mt]/.test(tie)) hung.ties.add('stop');
      if (/[im]/.test(tie)) hung.ties.add('start');
    }
  }
  return hung;
}

/**
 * One event of a layer as MusicXML notes; a space as `<forward>`. Slurs, figures and articulations of a chord stand on its first note.
 * A note without a pitch is written as unpitched.
 */
export function eventXml(event: LayerEvent, setting: NoteSetting): string {
  const length = divisionsOf(event.duration);
  const time = event.grace === null ? `<duration>${length}</duration>` : '';
  const grace = event.grace === null ? '' : event.grace === 'slashed' ? '<grace slash="yes"/>' : '<grace/>';
  const voice = `<voice>${setting.voice}</voice>`;
  const looks = shape(event);
  if (event.kind === 'space') return length ? `<forward><duration>${length}</duration></forward>` : '';
  if (event.kind === 'rest' || event.kind === 'wholeRest') {
    const hung = setting.hungOn(event.element) ?? nothingHung();
    return `<note>${grace}<rest${event.kind === 'wholeRest' ? ' measure="yes"' : ''}/>${time}${voice}${looks.replace('%accidental%', '')}${notationsXml(hung, { tuplets: tuplets(event), ornaments: [] })}</note>`;
  }
  const chord = event.kind === 'chord' ? event.element : null;
  const notes = chord ? shown(chord).filter(({ name }) => name === 'note') : [event.element];
  return notes
    .map((note, i) => {
      const pitch = setting.spelling.read(note);
      const hung = hungOn(note, i === 0 ? chord : null, setting);
      const chordSigns = chord && i === 0 ? setting.hungOn(chord) : undefined;
      if (chordSigns) merge(hung, chordSigns);
      const ties = [...hung.ties].map((type) => `<tie type="${type}"/>`).join('');
      const sounding = pitch ? `<pitch><step>${pitch.step}</step>${pitch.alter ? `<alter>${pitch.alter}</alter>` : ''}<octave>${pitch.octave}</octave></pitch>` : '<unpitched/>';
      const extra = i === 0 ? { tuplets: tuplets(event), ornaments: tremolo(event) } : { tuplets: [], ornaments: [] };
      return `<note>${grace}${i ? '<chord/>' : ''}${sounding}${time}${ties}${voice}${looks.replace('%accidental%', pitch?.sign ? `<accidental>${pitch.sign}</accidental>` : '').replace(i ? /<beam.*<\/beam>/ : '', '')}${notationsXml(hung, extra)}</note>`;
    })
    .join('');
}

function merge(hung: Hung, more: Hung): void {
  for (const tie of more.ties) hung.ties.add(tie);
  hung.slurs = [...hung.slurs, ...more.slurs];
  hung.slides = [...hung.slides, ...more.slides];
  hung.technical = [...hung.technical, ...more.technical];
  hung.articulations = [...hung.articulations, ...more.articulations];
  hung.ornaments = [...hung.ornaments, ...more.ornaments];
  hung.fermata ||= more.fermata;
  hung.arpeggio ||= more.arpeggio;
}
