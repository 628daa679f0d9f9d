/** Everything here is in staff spaces, y growing downward. */
export interface Box {
  x0: number;
  x1: number;
  y0: number;
  y1: number;
}

export interface NotePlace {
  /** Centre of the notehead. */
  x: number;
  y: number;
  measure: number;
}

/** Where things stand in one engraved system. */
export interface Geometry {
  width: number;
  height: number;
  /** First line of the first staff and last line of the last. */
  top: number;
  bottom: number;
  measures: { ordinal: number; x0: number; x1: number }[];
  notes: Record<string, NotePlace>;
  /** What stands on or near the notes: marks keep clear of it. */
  near: Box[];
  /** Words above the staff, which give way upward, and what stands below, which gives way downward. */
  high: Box[];
  low: Box[];
}

export interface EngravedSystem {
  /** Inner SVG in the engraver's units; `UNITS` of them are a staff space. */
  inner: string;
  geometry: Geometry;
}

/** The engraver's units in a staff space at scale 100. */
export const UNITS = 180;
