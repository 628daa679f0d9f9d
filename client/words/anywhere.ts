/** Without a line, on paper, and for the first time. */
export const anywhere = {
  newer: 'A newer page is here. Loading the page again takes it; nothing written is lost.',
  asOf: 'No line to the library. This is how it lay here last.',
  notKept: 'No line to the library, and this has not lain here lately. Open it once where there is a network; then it stays.',
  laying: 'The pages are being laid out for paper.',
  hints: {
    note: 'Tap a note or press an arrow; a digit writes a fingering.',
    open: 'Enter opens the measure: what is proposed there hangs under it, named like 23a: measure 23, first slip.',
    fingerings: 'f works out fingerings for what is in hand.',
  },
  /** The same for a finger. */
  touched: {
    note: 'Tap a note; “mark” brings the signs.',
    open: 'Tap the note in hand again, or “open”: what is proposed there hangs under the measure, named like 23a: measure 23, first slip.',
    fingerings: '“fingerings” works out what can be played here.',
  },
};
