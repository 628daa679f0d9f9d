import type { InstrumentName } from '../../core/music/part.ts';

export interface DemoSection {
  name: string;
  instrument: InstrumentName;
  /** Front to back, outside before inside; the first leads. */
  players: string[];
}

export const LIBRARIAN = 'Agnes Whitlow';
export const PRINCIPAL = 'Ilse Tarnow';
export const PARTNER = 'Marek Dvorsin';

export const DEMO_ENSEMBLE = 'Varnholm Strings';

/** Everybody in them is invented. */
export const ENSEMBLE: DemoSection[] = [
  {
    name: 'Violin I', instrument: 'violin',
    players: [PRINCIPAL, PARTNER, 'Celia Vantongel', 'Oren Halvard', 'Hester Quill', 'Tomas Breck', 'Wim Drachter', 'Noor Asmandi', 'Pia Solvesund', 'Jory Penhallick', 'Esme Okaduro', 'Bela Korvath'],
  },
  {
    name: 'Violin II', instrument: 'violin',
    players: ['Lorcan Tevish', 'Anneke Brandsund', 'Sorin Valdescan', 'Mireille Ostrande', 'Dagny Hoelstrom', 'Yusra Kemalin', 'Petra Lindgarth', 'Caspar Nightwell', 'Rosa Imbertini', 'Teodor Grabsky'],
  },
  {
    name: 'Viola', instrument: 'viola',
    players: ['Maud Ellingrath', 'Kenji Morozane', 'Ottilie Farnbeck', 'Silas Wrenfield', 'Ximena Dorrado', 'Bram Kuypersloot', 'Ingeborg Sanddal', 'Felix Amberose'],
  },
  {
    name: 'Violoncello', instrument: 'cello',
    players: ['Gregor Thalberin', 'Leonie Castravel', 'Idris Bellomane', 'Freya Skarsund', 'Hugo Pellerond', 'Aoife Darragal'],
  },
  {
    name: 'Double bass', instrument: 'double-bass',
    players: ['Rurik Stromvold', 'Carys Penllyr', 'Matteo Brunivald', 'Judith Zwanenbeck'],
  },
];
