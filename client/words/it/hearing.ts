import type { Words } from '../en.ts';

/** Sentences about hearing a passage. */
export const hearing = {
  title: 'Ascolto',
  hear: 'ascoltare',
  section: 'ascoltare la sezione',
  planned: 'ascoltare la sezione con questo piano',
  stands: 'ascoltare così com’è',
  preparing: 'Il passo si prepara per l’ascolto.',
  other: (letter) => `ascoltare l’altra, ${letter}`,
  stop: 'fermare',
  pace: 'tempo',
  percent: (pace) => (pace === 100 ? 'come scritto' : `${pace} %`),
  loop: 'di nuovo e di nuovo',
  click: 'con i tempi battuti',
  working: 'Il passo si prepara per l’ascolto. La barra spaziatrice lo lascia.',
  begun: { one: 'Il passo suona come è segnato; la barra spaziatrice lo ferma.', section: 'La sezione suona il passo, ognuno con le arcate del suo posto; la barra spaziatrice lo ferma.' },
  failed: 'Questo passo non si è potuto ascoltare. Sceglietene un altro, o premete ancora la barra spaziatrice.',
} satisfies Words['hearing'];
