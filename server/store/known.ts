/** A person wherever they play. */
export interface Known {
  id: string;
  name: string;
}
