/** How the part lies on the stand: lines that follow each other and fill the window, or the very lines and pages of the print. */
export interface View {
  form: 'lines' | 'paper';
  /** Times the usual size. */
  zoom: number;
}

export type ViewAction = { type: 'larger' | 'smaller' | 'turn' } | { type: 'pinch'; by: number };

/** Each about a fifth larger than the one before; chosen, not measured. */
export const ZOOMS: readonly number[] = [0.6, 0.7, 0.85, 1, 1.2, 1.45, 1.75, 2.1];
export const PLAIN: View = { form: 'lines', zoom: 1 };

const nearest = (zoom: number): number => ZOOMS.reduce((best, one) => (Math.abs(Math.log(one / zoom)) < Math.abs(Math.log(best / zoom)) ? one : best));

export function viewReducer(view: View, action: ViewAction): View {
  const at = ZOOMS.indexOf(nearest(view.zoom));
  switch (action.type) {
    case 'larger':
      return { ...view, zoom: ZOOMS[Math.min(ZOOMS.length - 1, at + 1)]! };
    case 'smaller':
      return { ...view, zoom: ZOOMS[Math.max(0, at - 1)]! };
    case 'pinch':
      return { ...view, zoom: nearest(view.zoom * action.by) };
    case 'turn':
      return { ...view, form: view.form === 'lines' ? 'paper' : 'lines' };
  }
}

/** What was kept in this browser; anything else is the plain view. */
export function viewFrom(kept: string | null): View {
  const [form, zoom] = (kept ?? '').split(' ');
  return (form === 'lines' || form === 'paper') && ZOOMS.includes(Number(zoom)) ? { form, zoom: Number(zoom) } : PLAIN;
}

export const viewText = ({ form, zoom }: View): string => `${form} ${zoom}`;
