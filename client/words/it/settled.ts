import type { Words } from '../en.ts';

/** One's own hand. */
export const hand = {
  title: 'La Sua mano',
  what: 'Lo vede solo Lei. Le diteggiature cercate per Lei mettono più in basso ciò che la Sua mano non raggiunge, lo dicono, e non nascondono nulla.',
  reach: (percent) => `Apertura: ${percent} % di una mano abituale`,
  shortFourth: 'il mio quarto dito è corto',
  keep: 'tenerla per me',
  forget: 'dimenticarla',
  kept: 'La Sua mano è annotata, solo per Lei.',
  forgotten: 'La Sua mano è dimenticata.',
  caution: 'Bowline conta millimetri; non conosce la Sua mano. Si fermi prima che dia fastidio e faccia pause. In caso di dolore, intorpidimento o perdita di controllo: si fermi e si rivolga a un medico. Su come suonare un passo, chieda al Suo insegnante.',
} satisfies Words['hand'];

/** What a section has settled. */
export const settled = {
  title: (section) => `Che cosa ha fissato ${section}`,
  what: 'Vale per ogni parte sui leggii della sezione. Ciò a cui badare si rilegge appena lo conferma.',
  whoSets: 'Lo fissano la prima parte o l’archivista. Lo dica a uno di loro se un numero non si adatta al Suo modo di suonare.',
  openStrings: 'Corde vuote',
  open: { free: 'come piace a ciascuno', avoided: 'evitate sulle note lunghe', wanted: 'volute dove cadono bene' },
  bowLasts: 'Quanto dura un arco',
  bowWhat: 'Secondi finché un arco intero è consumato, tenuto, a ogni dinamica.',
  bowShare: (instrument, percent) => `Secondi finché un arco intero è consumato, tenuto, come sul violino; per lo strumento ${instrument} Bowline ne conta il ${percent} %.`,
  secondsAt: (dynamic) => `secondi che dura un arco a ${dynamic}`,
  atOnce: 'Cambiare arco insieme in un passo sfalsato',
  strict: 'al massimo uno su otto: severo, per i punti piano e scoperti',
  ordinary: 'al massimo uno su quattro: abituale',
  ownShare: (percent) => `al massimo il ${percent} % degli strumentisti, com’è ora`,
  keep: 'tenere questi valori',
  usual: 'tornare al solito',
  kept: 'Tenuto per tutta la sezione. Ciò a cui badare si rilegge.',
  usualAgain: 'Per tutta la sezione valgono di nuovo i numeri soliti.',
} satisfies Words['settled'];
