import type { OtherSection } from '../../core/check/finding.ts';

/** Another section by the library's id of its part. */
export interface NamedSection extends OtherSection {
  id: string;
}

/** What is new of another section; its music and its marks are left out where they are as they were sent before. */
export interface SentSection {
  id: string;
  part: OtherSection['part'] | null;
  standing: Omit<OtherSection, 'part'> | null;
}

/** What has to be sent after `before`. Music that stays the same object on the other side keeps what was worked out of it. */
export function toSend(before: readonly NamedSection[], now: readonly NamedSection[]): SentSection[] {
  return now.map(({ id, section, part, marks, seats }) => {
    const known = before.find((one) => one.id === id);
    const isSame = known !== undefined && known.section === section && known.marks === marks && known.seats === seats;
    return { id, part: known?.part === part ? null : part, standing: isSame ? null : { section, marks, seats } };
  });
}

/** The sections as they stand after what was sent; objects that were not sent anew stay the same. Throws where something was never sent. */
export function received(before: readonly NamedSection[], sent: readonly SentSection[]): NamedSection[] {
  return sent.map(({ id, part, standing }) => {
    const known = before.find((one) => one.id === id);
    if (known && !part && !standing) return known;
    const [music, rest] = [part ?? known?.part, standing ?? known];
    if (!music || !rest) throw new Error(`Part ${id} was never sent.`);
    return { id, section: rest.section, part: music, marks: rest.marks, seats: rest.seats };
  });
}
