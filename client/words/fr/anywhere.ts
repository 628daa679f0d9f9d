import type { Words } from '../en.ts';

/** Without a line, on paper, and for the first time. */
export const anywhere = {
  newer: 'Une page plus récente est là. Recharger la page la prend ; rien d’écrit ne se perd.',
  asOf: 'Pas de liaison avec la bibliothèque. Voici ce qui se trouvait ici en dernier.',
  notKept: 'Pas de liaison avec la bibliothèque, et ceci n’a pas été ouvert ici récemment. Ouvrez-le une fois là où il y a un réseau ; il restera.',
  laying: 'Les pages sont mises en place pour le papier.',
  hints: {
    note: 'Touchez une note ou pressez une flèche ; un chiffre écrit un doigté.',
    open: 'Entrée ouvre la mesure : ce qui y est proposé pend au-dessous.',
    fingerings: 'f cherche des doigtés pour ce qui est en main.',
  },
} satisfies Words['anywhere'];
