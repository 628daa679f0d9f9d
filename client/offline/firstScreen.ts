let shown = (): void => {};
const seen = new Promise<void>((resolve) => (shown = resolve));

/** Called by the place that is shown first, as soon as it has done what it shows. */
export const firstScreenShown = (): void => shown();

/** When what is fetched for later no longer takes anything from the first screen; after `longest` milliseconds it is not waited for. */
export const firstScreen = (longest: number): Promise<void> => Promise.race([seen, new Promise<void>((resolve) => setTimeout(resolve, longest))]);
