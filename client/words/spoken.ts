/** What the ledge says of slips and votes, for who hears the page instead of seeing it. */
export const spoken = {
  slip: (slip: string, by: string, nth: number, of: number) => `${of > 1 ? `Slip ${nth} of ${of}, ` : 'Slip '}${slip} by ${by}`,
  counts: (plus: number, minus: number) => `${plus} for, ${minus} against`,
  mine: { for: 'you are for it', against: 'you are against it', none: 'your vote is open' },
  voted: { for: (slip: string) => `You are for ${slip}.`, against: (slip: string) => `You are against ${slip}.`, none: (slip: string) => `Your vote on ${slip} is taken back.` },
};
