import type { Words } from '../en.ts';

/** What the ledge says of slips and votes. */
export const spoken = {
  slip: (slip, by, nth, of) => `${of > 1 ? `Zettel ${nth} von ${of}, ` : 'Zettel '}${slip} von ${by}`,
  counts: (plus, minus) => `${plus} dafür, ${minus} dagegen`,
  mine: { for: 'Sie sind dafür', against: 'Sie sind dagegen', none: 'Ihre Stimme steht noch aus' },
  voted: { for: (slip) => `Sie sind für ${slip}.`, against: (slip) => `Sie sind gegen ${slip}.`, none: (slip) => `Ihre Stimme zu ${slip} ist zurückgenommen.` },
} satisfies Words['spoken'];
