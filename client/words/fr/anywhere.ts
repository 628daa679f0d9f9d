import type { Words } from '../en.ts';

/** Without a line, on paper, and for the first time. */
export const anywhere = {
  newer: 'Une page plus récente est là. Recharger la page la prend ; rien d’écrit ne se perd.',
  asOf: 'Pas de liaison avec la bibliothèque. Voici ce qui se trouvait ici en dernier.',
  notKept: 'Pas de liaison avec la bibliothèque, et ceci n’a pas été ouvert ici récemment. Ouvrez-le une fois là où il y a un réseau ; il restera.',
  laying: 'Les pages sont mises en place pour le papier.',
  hints: {
    note: 'Touchez une note ou pressez une flèche ; un chiffre écrit un doigté.',
    open: 'Entrée ouvre la mesure : ce qui y est proposé pend au-dessous, sous un nom comme 23a : mesure 23, première collette.',
    fingerings: 'f cherche des doigtés pour ce qui est en main.',
  },
  /** The same for a finger. */
  touched: {
    note: 'Touchez une note ; « écrire » apporte les signes.',
    open: 'Touchez encore la note, ou « ouvrir » : ce qui est proposé est suspendu sous la mesure, sous un nom comme 23a : mesure 23, première collette.',
    fingerings: '« doigtés » cherche ce qui se joue ici.',
  },
} satisfies Words['anywhere'];
