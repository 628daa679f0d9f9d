/** Something outside the program keeps it from starting. The message is the one line shown; it says what to do. */
export class Unstartable extends Error {
  override name = 'Unstartable';
}
