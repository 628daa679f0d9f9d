import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './french.ts';

/** What becomes of what one has written: what keeps it, what one can do, and that it has arrived. */
export const going = {
  what: {
    cut: 'Pas de liaison avec la bibliothèque ; elle se rétablit.',
    offline: 'Pas de liaison avec la bibliothèque : cet appareil n’a pas de réseau.',
    silent: 'Pas de liaison avec la bibliothèque : elle ne répond pas, ou le réseau est absent.',
    late: 'Pas encore écrit : la bibliothèque n’a pas répondu.',
    slower: 'Plus à la fois que la bibliothèque n’en prend.',
    shelvesAway: 'La bibliothèque n’atteint pas ses rayons en ce moment.',
    shelvesFull: 'Le disque de la bibliothèque est plein : rien ne peut être écrit en ce moment.',
    signedOut: 'Vous n’êtes plus connecté.',
    gone: 'Cette partie ne vous est plus ouverte : le programme est terminé, ou votre place a été rendue.',
    another: 'Quelqu’un d’autre s’est connecté dans ce navigateur.',
    oldProgram: 'Cette page est plus ancienne que la bibliothèque.',
  },
  can: {
    cut: 'Continuez à noter ; tout circulera quand la liaison reviendra.',
    offline: 'Continuez à noter ; tout circulera quand la liaison reviendra.',
    silent: 'Continuez à noter ; tout circulera quand la liaison reviendra.',
    late: 'Continuez à noter ; tout repart de soi-même.',
    slower: 'Continuez à noter ; chaque trait part à son tour.',
    shelvesAway: 'Continuez à noter ; tout repart de soi-même.',
    shelvesFull: 'Continuez à noter ; tout partira dès qu’il y aura de la place. Prévenez qui s’occupe de Bowline.',
    signedOut: 'Ouvrez un lien de connexion dans ce navigateur ; ce qui attend circulera alors.',
    gone: 'Demandez l’accès au bibliothécaire ; ce qui attend reste dans ce navigateur.',
    another: 'Chargez la page de nouveau ; ce que vous avez écrit est gardé pour vous.',
    oldProgram: 'Chargez-la de nouveau ; ce qui n’est pas parti est gardé.',
  },
  waits: (n) => (n ? `${capital(count(n, 'trait'))} ${n === 1 ? 'attend' : 'attendent'} dans votre crayon.` : ''),
  notKept: 'Ce navigateur ne garde rien : laissez la page ouverte.',
  written: 'Écrit : tout ce qui attendait est à la bibliothèque.',
} satisfies Words['going'];
