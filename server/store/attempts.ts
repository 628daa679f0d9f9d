/** How often something was tried. One shared truth for all processes that let people in. */
export interface Attempts {
  /** Counts one more and says how many there were since the stretch of `seconds` began; a new stretch begins with the first one after it. */
  count(key: string, seconds: number, now: Date): Promise<number>;
  /** It went well: what was counted is forgotten. */
  forget(key: string): Promise<void>;
}
