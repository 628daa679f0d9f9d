/** Starts a clock of time on the processor: what it returns tells the milliseconds since. Other work on the machine does not count. */
export function processorTime(): () => number {
  const start = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  };
}
