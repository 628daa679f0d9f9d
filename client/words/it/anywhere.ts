import type { Words } from '../en.ts';

/** Without a line, on paper, and for the first time. */
export const anywhere = {
  newer: 'C’è una pagina più nuova. Ricaricare la pagina la prende; nulla di scritto va perso.',
  asOf: 'Nessun collegamento con l’archivio. Così era qui l’ultima volta.',
  notKept: 'Nessun collegamento con l’archivio, e questo non è stato aperto qui di recente. Lo apra una volta dove c’è rete; poi resta.',
  laying: 'Le pagine vengono disposte per la carta.',
  hints: {
    note: 'Tocchi una nota o prema una freccia; una cifra scrive una diteggiatura.',
    open: 'Invio apre la battuta: ciò che vi è proposto pende sotto, con un nome come 23a: battuta 23, prima striscia.',
    fingerings: 'f calcola diteggiature per ciò che è in mano.',
  },
  /** The same for a finger. */
  touched: {
    note: 'Tocchi una nota; «segnare» porta i segni.',
    open: 'Tocchi ancora la nota, o «aprire»: ciò che è proposto pende sotto la battuta, con un nome come 23a: battuta 23, prima striscia.',
    fingerings: '«diteggiature» cerca ciò che si può suonare qui.',
  },
} satisfies Words['anywhere'];
