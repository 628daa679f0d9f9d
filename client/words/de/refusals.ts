import type { Words } from '../en.ts';

/** What the section's rules can refuse. Who may do a thing, and how it was decided, is not named: those words come in English. */
export const refusals = {
  NOT_YOUR_ROLE: 'Nicht geschrieben: das steht in dieser Gruppe anderen zu. Bitten Sie die Stimmführung oder die Bibliothek.',
  NOT_YOURS: 'Nicht geschrieben: das kann nur {owner} ändern. Schlagen Sie etwas Eigenes vor.',
  NOT_YOUR_COMMENT: 'Nicht geschrieben: erledigt nennen kann das nur, wer es gesagt hat, oder die Stimmführung. Antworten Sie lieber.',
  UNKNOWN_PROPOSAL: 'Nicht geschrieben: dieser Zettel liegt nicht in dieser Stimme. Laden Sie die Stimme neu.',
  UNKNOWN_COMMENT: 'Nicht geschrieben: diese Bemerkung steht nicht in dieser Stimme. Laden Sie die Stimme neu.',
  UNKNOWN_NOTE: 'Nicht geschrieben: die Stimme hat in Takt {from} bis {to} keine solche Note. Laden Sie die Stimme neu.',
  UNKNOWN_MEASURE: 'Nicht geschrieben: Takt {measure} liegt außerhalb dieser Stimme oder dieses Zettels.',
  UNKNOWN_SEAT: 'Nicht geschrieben: die Gruppe hat keinen Platz {seat}.',
  UNKNOWN_MUTE: 'Nicht geschrieben: dieser Befund liegt nicht zur Ruhe.',
  ALREADY_THERE: 'Nicht geschrieben: das ist schon da.',
  ALREADY_DECIDED: 'Nicht geschrieben: über diesen Zettel war entschieden, bevor Ihre Zeile ankam.',
  REVISED: 'Nicht geschrieben: der Zettel wurde neu geschrieben, bevor Ihre Zeile ankam. Sehen Sie ihn noch einmal an.',
  ALREADY_RESOLVED: 'Nicht geschrieben: die Bemerkung ist schon erledigt.',
  SAME_SLOT_TWICE: 'Nicht geschrieben: zwei Zeichen einer Art auf derselben Note in Takt {measure}. Behalten Sie eines.',
  NOTHING_TO_CHANGE: 'Nicht geschrieben: es würde sich nichts ändern.',
  LOCKED: 'Nicht geschrieben: die Stimme ist zum Drucken abgeschlossen. Bitten Sie die Bibliothek, sie wieder zu öffnen.',
  OLD_PROGRAM: 'Diese Seite ist älter als die Bibliothek. Laden Sie sie neu; was noch nicht fort ist, bleibt.',
  BAD_INPUT: 'Nicht geschrieben: {detail}',
  TOO_MUCH: 'Nicht geschrieben: zu viele Zeilen auf einmal. Warten Sie einen Augenblick.',
} satisfies Words['refusals'];
