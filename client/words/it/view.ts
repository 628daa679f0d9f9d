import type { Words } from '../en.ts';

/** How the part lies on the stand, and what lies under its lines. */
export const view = {
  lines: (zoom: number) => `Riga dopo riga, ${Math.round(zoom * 100)} per cento.`,
  paper: (zoom: number) => `Righe e pagine come saranno stampate, ${Math.round(zoom * 100)} per cento.`,
  page: (page: number) => `pagina ${page}`,
  underneath: (part: string) => `Sotto ogni riga sta ${part}.`,
  nothingUnderneath: 'Qui c’è solo la propria parte.',
  noOthers: 'Questo lavoro non ha altre parti d’archi.',
  unread: (measures: number) => `da leggere in ${measures} ${measures === 1 ? 'battuta' : 'battute'}`,
  comes: (part: string) => `${part} viene incisa.`,
} satisfies Words['view'];
