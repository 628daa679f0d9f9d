import type { Words } from '../en.ts';

/** Without a line, on paper, and for the first time. */
export const anywhere = {
  newer: 'C’è una pagina più nuova. Ricaricare la pagina la prende; nulla di scritto va perso.',
  asOf: 'Nessun collegamento con l’archivio. Così era qui l’ultima volta.',
  notKept: 'Nessun collegamento con l’archivio, e questo non è stato aperto qui di recente. Lo apra una volta dove c’è rete; poi resta.',
  hints: {
    note: 'Tocchi una nota o prema una freccia; una cifra scrive una diteggiatura.',
    open: 'Invio apre la battuta: ciò che vi è proposto pende sotto.',
    fingerings: 'f calcola diteggiature per ciò che è in mano.',
    programme: 'Un programma porta alla sua cartella.',
    part: 'Le frecce scelgono una parte; Invio la apre.',
    passage: 'Un passo lungo tenuto: v sul leggio ripartisce i cambi d’arco fra i leggii.',
  },
} satisfies Words['anywhere'];
