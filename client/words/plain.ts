/** A text without capitals and accents, for finding what was meant. Example: "Démancher" is "demancher". */
export const plain = (text: string): string => text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');
