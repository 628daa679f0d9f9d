/** A small score as text, for tests: one part "P1" called "Violin", one measure a string; the first measure gets divisions 4 and 4/4. */
export function scoreText(measures: readonly string[], { attributes = '<divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type></time>', name = 'Violin' } = {}): string {
  const body = measures.map((content, i) => `<measure number="${i + 1}">${i === 0 ? `<attributes>${attributes}</attributes>` : ''}${content}</measure>`).join('\n');
  return `<?xml version="1.0" encoding="UTF-8"?>\n<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>${name}</part-name></score-part></part-list><part id="P1">\n${body}\n</part></score-partwise>\n`;
}

/** A note as text: `note('C5', 4)` is a quarter with divisions 4. `inside` comes after the duration and voice, `before` stands first. */
export function note(pitch: string, duration: number, inside = '', { before = '', voice = '1' } = {}): string {
  const match = /^([A-G])(#|b)?(\d)$/.exec(pitch);
  const sound = match ? `<pitch><step>${match[1]}</step>${match[2] ? `<alter>${match[2] === '#' ? 1 : -1}</alter>` : ''}<octave>${match[3]}</octave></pitch>` : '<rest/>';
  return `<note>${before}${sound}${duration ? `<duration>${duration}</duration>` : ''}<voice>${voice}</voice>${inside}</note>`;
}
