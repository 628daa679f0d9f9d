import type { Words } from '../en.ts';

/** How the part lies on the stand, and what lies under its lines. */
export const view = {
  lines: (zoom: number) => `Zeile um Zeile, ${Math.round(zoom * 100)} Prozent.`,
  paper: (zoom: number) => `Zeilen und Seiten, wie sie gedruckt werden, ${Math.round(zoom * 100)} Prozent.`,
  page: (page: number) => `Seite ${page}`,
  underneath: (part: string) => `Unter jeder Zeile liegt ${part}.`,
  nothingUnderneath: 'Hier liegt nur die eigene Stimme.',
  noOthers: 'Dieses Werk hat keine andere Streicherstimme.',
  unread: (measures: number) => `Ungelesenes in ${measures} ${measures === 1 ? 'Takt' : 'Takten'}`,
  comes: (part: string) => `${part} wird gestochen.`,
} satisfies Words['view'];
