import type { Words } from '../en.ts';

/** What the section's rules can refuse. Who may do a thing, and how it was decided, is not named: those words come in English. */
export const refusals = {
  NOT_YOUR_ROLE: 'Non scritto: in questa sezione spetta ad altri. Chieda alla prima parte o all’archivista.',
  NOT_YOURS: 'Non scritto: solo {owner} può cambiarlo. Proponga qualcosa di Suo.',
  NOT_YOUR_COMMENT: 'Non scritto: solo chi l’ha detto, o la prima parte, può concluderlo. Piuttosto risponda.',
  UNKNOWN_PROPOSAL: 'Non scritto: questa striscia non è in questa parte. Ricarichi la parte.',
  UNKNOWN_COMMENT: 'Non scritto: questo discorso non è in questa parte. Ricarichi la parte.',
  UNKNOWN_NOTE: 'Non scritto: la parte non ha una nota così nelle battute da {from} a {to}. Ricarichi la parte.',
  UNKNOWN_MEASURE: 'Non scritto: la battuta {measure} è fuori da questa parte o da questa striscia.',
  UNKNOWN_SEAT: 'Non scritto: la sezione non ha un posto {seat}.',
  UNKNOWN_MUTE: 'Non scritto: questa osservazione non è a riposo.',
  ALREADY_THERE: 'Non scritto: c’è già.',
  ALREADY_DECIDED: 'Non scritto: su questa striscia si era deciso prima che arrivasse la Sua riga.',
  REVISED: 'Non scritto: la striscia è stata riscritta prima che arrivasse la Sua riga. La guardi di nuovo.',
  ALREADY_RESOLVED: 'Non scritto: il discorso è già concluso.',
  SAME_SLOT_TWICE: 'Non scritto: due segni dello stesso genere su una nota della battuta {measure}. Ne tenga uno.',
  NOTHING_TO_CHANGE: 'Non scritto: non cambierebbe nulla.',
  LOCKED: 'Non scritto: la parte è chiusa per la stampa. Chieda all’archivista di riaprirla.',
  OLD_PROGRAM: 'Questa pagina è più vecchia dell’archivio. La ricarichi; ciò che non è partito resta.',
  BAD_INPUT: 'Non scritto: {detail}',
  TOO_MUCH: 'Non scritto: troppe righe in una volta. Aspetti un momento.',
} satisfies Words['refusals'];
