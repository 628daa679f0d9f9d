import type { Words } from '../en.ts';

/** What the rules say, by rule and message. */
export const findings = {
  'bow/retake-in-time': { tooFast: 'Dans {where}, la reprise d’archet vient {seconds} s après le début du coup précédent{tempo} ({who}) ; jouer et revenir demandent environ {needed} s. Jouez les notes comme elles viennent, ou mettez-les dans le même coup.' },
  'bow/chord-up': { up: 'Dans {where}, un accord de {count} notes commence en poussé après un silence ({who}). Tournez le signe si rien ne s’y oppose.' },
  'bow/same-music': { differs: 'Dans {where}, {pitch} est en {bow}, mais en {other} dans la même musique de {before}. Prenez le même coup pour les deux, ou laissez si la différence est voulue.' },
  'bow/change-past-note': { past: 'Dans {where}, un changement d’archet tombe {after} après le début d’une note qui dure {length} ({who}). Déplacez-le dans la note ou sur la suivante.' },
  'bow/plucked': {
    sign: 'Dans {where}, une note porte un signe d’archet mais se joue encore pizzicato ({who}). Écrivez arco si l’archet est voulu, ou déplacez le signe.',
    printedSign: 'Dans {where}, un signe d’archet est imprimé sur une note encore pizzicato. Si arco y est voulu, écrivez-le, pour que personne n’ait à demander.',
    manner: 'Dans {where}, une note porte un signe de conduite d’archet mais se joue encore pizzicato ({who}). Déplacez le signe sur une note à l’archet, ou gommez-le.',
  },
  'bow/change-in-tremolo': {
    change: 'Dans {where}, un changement d’archet tombe dans un trémolo ({who}), où l’archet change sans cesse. Gommez-le, ou déplacez-le sur une note tenue.',
    hook: 'Dans {where}, un trémolo est mis dans le coup précédent ({who}), mais n’a pas de coup à lui. Gommez ou déplacez le signe.',
  },
  'bow/same-direction': {
    twice: 'Dans {where}, {bow} suit {bow} ({who}). Écrivez une reprise ou le même coup d’archet, ou tournez l’un des signes.',
    printedTwice: 'Dans {where}, {bow} est imprimé deux fois de suite. Si une reprise ou le même coup est voulu, écrivez-le, pour que personne n’ait à demander.',
    miscounted: 'Dans {where}, après {between}, l’archet arrive en {other}, mais {bow} est écrit ({who}). Écrivez en chemin une reprise, le même coup ou une liaison, ou tournez le signe.',
  },
  'bow/outlasts-bow': {
    needsMore: 'À partir de {where}, un archet doit durer {seconds} s en {dynamic}{tempo}, où un archet dure environ {bow} s ({who}). Écrivez un changement d’archet, ou divisez la liaison.',
    outOfReach: 'À partir de {where}, un archet devrait durer {seconds} s en {dynamic}{tempo}, où un archet dure environ {bow} s ({who}) : injouable ainsi. Écrivez des changements d’archet, ou divisez la liaison.',
  },
  'bow/hook-apart': {
    alone: 'Dans {where}, une note est mise dans le même coup, mais rien n’est joué à l’archet dans les {rest} s avant et après ({who}). Déplacez le signe, ou gommez-le.',
    otherWay: 'Dans {where}, une note mise dans le même coup est écrite en {bow}, mais le coup précédent va en {other} ({who}). Tournez l’un des signes, ou gommez le même coup.',
  },
  'notation/both-bows-printed': { both: 'Dans {where}, poussé et tiré sont imprimés sur une même note ({who}). Écrivez celui que joue votre pupitre.' },
  'notation/bow-inside-slur': {
    insideSlur: 'Dans {where}, {bow} est écrit sous une liaison qui continue ({who}). Divisez la liaison ou écrivez un changement d’archet si l’archet tourne là, ou gommez le signe.',
    tiedOver: 'Dans {where}, {bow} est écrit sur une note tenue qui sonne déjà ({who}). Écrivez un changement d’archet si l’archet tourne là, ou déplacez le signe.',
  },
  'notation/slur-mark-nowhere': {
    splitsNothing: 'Dans {where}, une liaison est divisée sur une note qu’aucune n’atteint ({who}). Déplacez la division sous une liaison, ou gommez-la.',
    joinsNothing: 'Dans {where}, une liaison est jointe à la suite, mais il n’y a rien à joindre ({who}). Déplacez cela sur la dernière note d’une liaison, ou gommez-le.',
    joinsRest: 'Dans {where}, une liaison est jointe par-dessus un silence ({who}) : l’archet s’y arrête, ce sont donc deux coups. Écrivez le même coup d’archet s’il continue dans le même sens, ou gommez.',
  },
  'notation/retake-inside-slur': {
    insideSlur: 'Dans {where}, une reprise d’archet est écrite sous une liaison ({who}). Divisez-la là, ou déplacez le signe à son début.',
    tiedOver: 'Dans {where}, une reprise d’archet est écrite sur une note tenue ({who}) : l’archet ne peut pas quitter la corde. Divisez la liaison de tenue, ou déplacez le signe.',
  },
  'notation/marks-disagree': {
    hookAndRetake: 'Dans {where}, une note porte « même coup » et « reprise » ({who}) : l’archet ne peut pas rester et revenir à la fois. Gommez l’un des deux.',
    hookAndSplit: 'Dans {where}, une note est mise dans le même coup et commence aussi un nouvel archet ({who}). Gommez le même coup, ou bien la division ou le changement.',
    joinThenNew: 'Dans {where}, la note précédente est jointe à celle-ci, qui commence un nouvel archet ({who}). Gommez la jonction, ou ce qui commence l’archet.',
  },
  'notation/string-words': { other: 'Dans {where}, {pitch} est écrit pour la corde {string} ({who}), mais les mots au-dessus demandent la corde {words}. Écrivez où les mots cessent, ou donnez cette corde à la note.' },
  'notation/mark-on-unplayed': {
    rest: 'Dans {where}, un signe est sur un silence ({who}). Déplacez-le sur la note à laquelle il est destiné.',
    cue: 'Dans {where}, un signe est sur des notes-repères que cette partie ne joue pas ({who}). Déplacez-le sur une note de la partie.',
    hidden: 'Dans {where}, un signe est sur une note que l’impression ne montre pas ({who}) ; personne ne le verra. Déplacez-le sur une note visible.',
  },
  'fingering/shift-in-time': {
    tooFast: 'Dans {where}, {pitch} avec le doigt {finger} demande un démanché d’environ {mm} mm, qui prend environ {needs} ms ; il y a {available} ms. Démanchez plus tôt, étendez, ou prenez une autre corde.',
    hard: 'Dans {where}, {pitch} avec le doigt {finger} demande un démanché d’environ {mm} mm en {available} ms, qui prend environ {needs} ms. Un démanché plus tôt laisserait plus de temps.',
  },
  'fingering/hand-order': { crossed: 'Dans {where}, {pitch} porte le doigt {finger} entre deux notes d’une même position où il n’est pas dans l’ordre : la main irait et reviendrait aussitôt. Peut-être un autre doigt est-il voulu.' },
  'fingering/substitution': {
    same: 'Dans {where}, un doigt doit se remplacer lui-même sur une note ({who}). Écrivez-le une fois, ou celui qui remplace.',
    open: 'Dans {where}, un doigt et la corde à vide doivent se remplacer sur une note ({who}). Appuyez la note dès le début, ou laissez-la à vide.',
  },
  'fingering/exposed-slide': { slides: '{Who} : le démanché d’environ {distance} vers {pitch} dans {where} est sous une liaison sur une seule corde, et le glissement s’entend. S’il n’est pas voulu, démanchez sur une autre note, au changement d’archet, ou prenez une autre corde.' },
  'fingering/thumb': {
    holdsTheNeck: 'Dans {where}, {pitch} est écrit pour le pouce, qui tient le manche sur cet instrument. Donnez un autre doigt à la note.',
    low: 'Dans {where}, {pitch} est écrit pour le pouce si bas sur la corde qu’il est derrière le manche. Prenez un autre doigt ou une corde plus grave.',
  },
  'fingering/same-music': { differs: '{Who} : dans {where}, {pitch} porte le doigt {finger}, mais le doigt {other} dans la même musique de {before}. Prenez un seul doigté pour les deux, ou laissez si la différence est voulue.' },
  'fingering/tied-over': {
    again: 'Dans {where}, {pitch} est tenu et porte encore le doigt {finger}. Cela ne dit rien de neuf : gommez-le, ou mettez-le sur la note voulue.',
    otherString: 'Dans {where}, {pitch} est tenu et écrit pour la corde {string}, mais a commencé sur la corde {began}. Une note tenue ne peut pas changer de corde : séparez la tenue, ou commencez sur la corde {string}.',
  },
  'fingering/trill-finger': { fourth: 'Dans {where}, un trille est sur une note au 4e doigt ({who}) : il ne reste pas de doigt pour triller. Prenez un doigt plus bas dans une position plus haute.' },
  'fingering/one-hand': {
    oneString: 'Dans {where}, {low} et {high} tombent sur la même corde et ne peuvent pas sonner ensemble. Donnez une autre corde à l’une des notes, ou divisez.',
    apart: 'Dans {where}, {low} et {high} sont sur des cordes qui ne sont pas voisines ; un archet ne peut pas tenir les deux. Choisissez des cordes voisines, ou divisez.',
    oneFinger: 'Dans {where}, {low} et {high} portent le même doigt à deux endroits. Donnez-en un autre à l’une des notes, ou divisez.',
    crossed: 'Dans {where}, les doigts se croisent sur {low} et {high} : le plus haut serait derrière le plus bas. Échangez-les, ou choisissez d’autres cordes.',
    wide: 'Dans {where}, {low} et {high} sont à {mm} mm l’un de l’autre avec ces doigts. C’est un écart plus grand que dans la plupart des doigtés imprimés : d’autres doigts, d’autres cordes, ou divisez. Douleur, engourdissement ou perte de contrôle : arrêtez et consultez un médecin.',
  },
  'fingering/zero-is-open': {
    stoppedPitch: 'Dans {where}, {pitch} porte un 0 sur la corde {string}, mais cette corde à vide sonne {open}. Donnez à la note un autre doigt ou une autre corde.',
    noOpenString: 'Dans {where}, {pitch} porte un 0, mais aucune corde à vide ne sonne ainsi. Donnez un autre doigt à la note, ou écrivez un harmonique si c’en est un.',
    perhapsHarmonic: 'Dans {where}, {pitch} porte un 0 et n’est pas une corde à vide ; en harmonique, le son appartient à la corde {string}. Si c’est voulu, écrivez l’harmonique.',
  },
  'fingering/reach': { wide: 'Dans {where}, l’extension vers {pitch} demande {mm} mm du doigt {from} au doigt {to}. C’est plus que la plupart des doigtés imprimés : laissez suivre la main, ou prenez une autre corde. Douleur, engourdissement ou perte de contrôle : arrêtez et consultez un médecin.' },
  'fingering/harmonic-node': {
    noString: 'Dans {where}, {pitch} est écrit en harmonique, mais aucune corde n’en a là, ni en son ni au toucher. Écrivez un harmonique artificiel, ou appuyez la note.',
    noNode: 'Dans {where}, l’harmonique artificiel touche {pitch}, {distance} demi-tons au-dessus du son appuyé, où il n’y a pas de nœud. Touchez une tierce, une quarte ou une quinte au-dessus.',
  },
  'fingering/pitch-on-string': {
    belowString: 'Dans {where}, {pitch} est écrit pour la corde {string}, mais cette corde commence à vide à {open}. Choisissez une corde plus grave.',
    beyondFingerboard: 'Dans {where}, {pitch} est écrit pour la corde {string}, où le son est au-delà de la touche. Choisissez une corde plus aiguë, ou écrivez un harmonique.',
    belowInstrument: 'Dans {where}, {pitch} porte un doigt mais est sous la corde la plus grave. Si votre corde grave descend si bas, convenez-en pour le pupitre.',
    noSuchHarmonic: 'Dans {where}, {pitch} est écrit en harmonique sur la corde {string}, qui n’en a pas là. Choisissez une autre corde, ou écrivez un harmonique artificiel.',
  },
  'fingering/open-strings': {
    avoided: 'Dans {where}, {pitch} est écrit à vide, et ce pupitre évite les cordes à vide. Appuyez le son sur la corde {string}, ou laissez-le comme exception.',
    wanted: 'Dans {where}, {pitch} est pris avec le doigt {finger}, et ce pupitre veut les cordes à vide. Jouez le son à vide, ou laissez-le comme exception.',
  },
  'desk/partners-bowed-apart': { apart: '{Who} : dans {where}, l’un est en poussé et l’autre en tiré. Tournez l’un des signes.' },
  'desk/partners-shift-together': { together: '{Who} : les deux démanchent d’environ {distance} sur la même note, {pitch} dans {where}, sous une liaison. L’un pourrait démancher sur une autre note ou rester sur une autre corde.' },
  'desk/open-beside-stopped': { mixed: '{Who} : dans {where}, l’un joue à vide une note de {seconds} s, l’autre l’appuie. Donnez la même chose aux deux.' },
  'desk/partners-change-together': {
    sameMoment: '{Who} : les deux changent d’archet au même instant dans {where}. Déplacez l’un des changements.',
    tooClose: '{Who} : les deux changent d’archet à {seconds} s l’un de l’autre dans {where}. Gardez au moins {least} s entre eux.',
    sameSubdivision: '{Who} : les deux changent d’archet sur la même subdivision du temps dans {where}. Déplacez l’un des changements sur une autre.',
  },
  'section/change-on-barline': { onBarline: '{Who} : le changement d’archet d’un passage échelonné tombe sur la barre de {where}. Déplacez-le hors du temps, dans la mesure d’avant ou d’après.' },
  'section/arrives-apart': { apart: '{Who} et les autres arrivent après le passage échelonné, dans {where}, avec des coups contraires. Écrivez ce coup pour tous, ou donnez à une partie un changement de plus.' },
  'section/unison-bowed-against': {
    unison: 'Dans {where}, un {bow} commence sur {pitch}, et dans {other}, avec les mêmes notes, un {theirs}. Tournez l’un des deux.',
    rhythm: 'Dans {where}, un {bow} commence sur {pitch}, et dans {other}, avec le même rythme et les mêmes liaisons, un {theirs}. Tournez l’un des deux, ou laissez si c’est voulu.',
    counted: 'Dans {where}, l’archet arrive sur {pitch} en {bow}, et dans {other} au même moment en {theirs}. Écrivez un coup dans l’une des deux, pour qu’elles aillent ensemble.',
    printed: 'Dans {where}, {bow} est imprimé sur {pitch}, et dans {other} au même moment {theirs}. Convenez de l’un.',
  },
  'section/unison-slurred-otherwise': {
    split: 'Dans {where}, un nouvel archet commence sur {pitch}, pendant que {other} restent dans l’ancien au même moment. Écrivez la même liaison dans les deux, ou laissez si c’est voulu.',
    joined: 'Dans {where}, l’archet continue au-delà de {pitch}, pendant que {other} en commencent un nouveau au même moment. Écrivez la même liaison dans les deux, ou laissez si c’est voulu.',
  },
  'section/bowed-apart': { apart: 'Dans {where}, {up} est en poussé et {down} en tiré. Tournez les signes d’une partie si les deux ne sont pas voulus.' },
  'section/too-many-at-once': { crowd: 'Dans {where}, {count} changent d’archet en l’espace de {within} s ({who}) ; {allowed} au plus passent inaperçus. Déplacez quelques-uns de ces changements.' },
  'parts/divided-bowed-against': { against: 'Dans {where}, les deux voix vont ensemble mais tirent l’une contre l’autre, en haut {upper} et en bas {lower} ({who}). Tournez l’un des signes.' },
  'parts/pizz-in-time': {
    toPizz: 'Dans {where}, pizz. vient {seconds} s après le début de la dernière note à l’archet{tempo}. Convenez de qui laisse cette note, ou partagez-la par rangs.',
    toArco: 'Dans {where}, arco vient {seconds} s après la dernière note pincée{tempo}. Convenez de qui laisse une note, ou partagez par rangs.',
  },
  'parts/mute-in-time': {
    on: 'Dans {where}, il reste {seconds} s de silence pour mettre les sourdines{tempo} ; un pupitre met environ {needed} s. Convenez des rangs qui les mettent d’abord.',
    off: 'Dans {where}, il reste {seconds} s de silence pour ôter les sourdines{tempo} ; un pupitre met environ {needed} s. Convenez des rangs qui les ôtent d’abord.',
  },
} satisfies Words['findings'];
