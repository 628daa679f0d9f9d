import type { Words } from '../en.ts';

/** How the part lies on the stand, and what lies under its lines. */
export const view = {
  lines: (zoom: number) => `Ligne après ligne, ${Math.round(zoom * 100)} pour cent.`,
  paper: (zoom: number) => `Lignes et pages telles qu’elles seront imprimées, ${Math.round(zoom * 100)} pour cent.`,
  page: (page: number) => `page ${page}`,
  underneath: (part: string) => `${part} se trouve sous chaque ligne.`,
  nothingUnderneath: 'Votre partie est seule ici.',
  noOthers: 'Cette œuvre n’a pas d’autre partie de cordes.',
  unread: (measures: number) => `du non lu dans ${measures} ${measures === 1 ? 'mesure' : 'mesures'}`,
  comes: (part: string) => `${part} est en cours de gravure.`,
} satisfies Words['view'];
