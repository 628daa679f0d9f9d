import type { Words } from '../en.ts';

/** Without a line, on paper, and for the first time. */
export const anywhere = {
  newer: 'Eine neuere Seite ist da. Neu laden holt sie; nichts Geschriebenes geht verloren.',
  asOf: 'Keine Verbindung zur Bibliothek. So lag es zuletzt hier.',
  notKept: 'Keine Verbindung zur Bibliothek, und dies lag in letzter Zeit nicht hier. Öffnen Sie es einmal, wo es ein Netz gibt; dann bleibt es.',
  laying: 'Die Seiten werden für das Papier ausgelegt.',
  hints: {
    note: 'Tippen Sie auf eine Note oder drücken Sie einen Pfeil; eine Ziffer schreibt einen Fingersatz.',
    open: 'Enter öffnet den Takt: Was dort vorgeschlagen ist, hängt darunter und heißt etwa 23a: Takt 23, erster Zettel.',
    fingerings: 'f rechnet Fingersätze für das aus, was in der Hand ist.',
  },
  /** The same for a finger. */
  touched: {
    note: 'Tippen Sie auf eine Note; „Zeichen“ bringt die Zeichen.',
    open: 'Tippen Sie noch einmal auf die Note oder auf „öffnen“: was vorgeschlagen ist, hängt unter dem Takt und heißt etwa 23a: Takt 23, erster Zettel.',
    fingerings: '„Fingersätze“ sucht, was sich hier spielen lässt.',
  },
} satisfies Words['anywhere'];
