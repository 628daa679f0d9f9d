import type { Words } from '../en.ts';

/** What the ledge says of slips and votes. */
export const spoken = {
  slip: (slip, by, nth, of) => `${of > 1 ? `Striscia ${nth} di ${of}, ` : 'Striscia '}${slip} di ${by}`,
  counts: (plus, minus) => `${plus} a favore, ${minus} contro`,
  mine: { for: 'lei è a favore', against: 'lei è contro', none: 'il suo voto manca ancora' },
  voted: { for: (slip) => `Lei è a favore di ${slip}.`, against: (slip) => `Lei è contro ${slip}.`, none: (slip) => `Il suo voto su ${slip} è ritirato.` },
} satisfies Words['spoken'];
