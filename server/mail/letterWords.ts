import type { LettersWish } from '../store/attention.ts';

const quantity = (n: number, one: string, many: string): string => (n === 1 ? one : many);

/** What a letter says; the language is chosen with the address. */
interface LetterWords {
  subject(n: number): string;
  greeting(name: string): string;
  part(work: string, part: string): string;
  named(who: string, measure: string, text: string): string;
  adopted(slip: string, who: string): string;
  setAside(slip: string, who: string): string;
  vote(slip: string, who: string, day: string): string;
  stop(minutes: number, shelf: string): string;
}

export const LETTER_WORDS: Record<LettersWish['language'], LetterWords> = {
  en: {
    subject: (n) => `Bowline: ${quantity(n, 'one thing concerns you', `${n} things concern you`)}`,
    greeting: (name) => `Good day ${name},`,
    part: (work, part) => `${work}, ${part}`,
    named: (who, measure, text) => `${who} names you, measure ${measure}: “${text}”`,
    adopted: (slip, who) => `Your ${slip} is inked in by ${who}.`,
    setAside: (slip, who) => `Your ${slip} is set aside by ${who}.`,
    vote: (slip, who, day) => `${slip} by ${who} waits for your vote; the first rehearsal is on ${day}.`,
    stop: (minutes, shelf) => `You asked for these letters; there is one at most every ${minutes} minutes. To stop them: ${shelf}, under “Letters by e-mail”, no more letters.`,
  },
  de: {
    subject: (n) => `Bowline: ${quantity(n, 'eines geht Sie an', `${n} Dinge gehen Sie an`)}`,
    greeting: (name) => `Guten Tag ${name},`,
    part: (work, part) => `${work}, Stimme ${part}`,
    named: (who, measure, text) => `${who} nennt Sie, Takt ${measure}: „${text}“`,
    adopted: (slip, who) => `Ihr ${slip} ist von ${who} festgeschrieben.`,
    setAside: (slip, who) => `Ihr ${slip} ist von ${who} beiseite gelegt.`,
    vote: (slip, who, day) => `${slip} von ${who} wartet auf Ihre Stimme; die erste Probe ist am ${day}.`,
    stop: (minutes, shelf) => `Sie haben um diese Briefe gebeten; es kommt höchstens alle ${minutes} Minuten einer. So hören sie auf: ${shelf}, unter „Briefe per E-Mail“, keine Briefe mehr.`,
  },
  fr: {
    subject: (n) => `Bowline : ${quantity(n, 'une chose vous concerne', `${n} choses vous concernent`)}`,
    greeting: (name) => `Bonjour ${name},`,
    part: (work, part) => `${work}, partie ${part}`,
    named: (who, measure, text) => `${who} vous nomme, mesure ${measure} : « ${text} »`,
    adopted: (slip, who) => `Votre ${slip} est fixée à l’encre par ${who}.`,
    setAside: (slip, who) => `Votre ${slip} est écartée par ${who}.`,
    vote: (slip, who, day) => `${slip} de ${who} attend votre voix ; la première répétition est le ${day}.`,
    stop: (minutes, shelf) => `Vous avez demandé ces lettres ; il en vient une au plus toutes les ${minutes} minutes. Pour les arrêter : ${shelf}, sous « Lettres par courriel », plus de lettres.`,
  },
  it: {
    subject: (n) => `Bowline: ${quantity(n, 'una cosa La riguarda', `${n} cose La riguardano`)}`,
    greeting: (name) => `Buongiorno ${name},`,
    part: (work, part) => `${work}, parte ${part}`,
    named: (who, measure, text) => `${who} fa il Suo nome, battuta ${measure}: «${text}»`,
    adopted: (slip, who) => `La Sua ${slip} è fissata a penna da ${who}.`,
    setAside: (slip, who) => `La Sua ${slip} è accantonata da ${who}.`,
    vote: (slip, who, day) => `${slip} di ${who} aspetta il Suo voto; la prima prova è il ${day}.`,
    stop: (minutes, shelf) => `Lei ha chiesto queste lettere; ne arriva al più una ogni ${minutes} minuti. Per fermarle: ${shelf}, sotto «Lettere per posta elettronica», basta lettere.`,
  },
};
