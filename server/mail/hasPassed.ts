/** Whether `ms` have passed since `then`. Of a moment that has not come yet the clock was wrong, then or now: nobody waits for it. */
export function hasPassed(ms: number, then: Date, now: Date): boolean {
  const since = now.getTime() - then.getTime();
  return since < 0 || since >= ms;
}
