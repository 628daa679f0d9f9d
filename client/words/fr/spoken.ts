import type { Words } from '../en.ts';

/** What the ledge says of slips and votes. */
export const spoken = {
  slip: (slip, by, nth, of) => `${of > 1 ? `Collette ${nth} sur ${of}, ` : 'Collette '}${slip} de ${by}`,
  counts: (plus, minus) => `${plus} pour, ${minus} contre`,
  mine: { for: 'vous êtes pour', against: 'vous êtes contre', none: 'votre voix manque encore' },
  voted: { for: (slip) => `Vous êtes pour ${slip}.`, against: (slip) => `Vous êtes contre ${slip}.`, none: (slip) => `Votre voix sur ${slip} est retirée.` },
} satisfies Words['spoken'];
