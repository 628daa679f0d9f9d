import { collectDefaultMetrics, Counter, Gauge, Histogram, Registry } from 'prom-client';

export type Outcome = 'written' | 'refused' | 'signedOut' | 'noSuchPart' | 'fault' | 'away';

/** What can be counted of this server, for Prometheus. Labels name routes, operations and outcomes, never people, parts or ensembles. */
export interface Measures {
  request(method: string, route: string, status: number, seconds: number): void;
  operation(name: string, outcome: Outcome, seconds: number): void;
  batch(size: number): void;
  /** Asked when the numbers are read. */
  gauge(name: string, help: string, read: () => number): void;
  /** The same with one label. */
  gauges(name: string, help: string, label: string, read: () => Readonly<Record<string, number>> | Promise<Readonly<Record<string, number>>>): void;
  text(): Promise<string>;
  readonly contentType: string;
}

const SECONDS = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30];

export function createMeasures(): Measures {
  const registers = [new Registry()];
  const [registry] = registers as [Registry];
  // Delay of the event loop, memory, handles.
  collectDefaultMetrics({ register: registry });
  const requests = new Counter({ name: 'bowline_requests_total', help: 'Requests answered.', labelNames: ['method', 'route', 'status'], registers });
  const requestTime = new Histogram({ name: 'bowline_request_seconds', help: 'How long requests took.', labelNames: ['method', 'route'], buckets: SECONDS, registers });
  const operations = new Counter({ name: 'bowline_operations_total', help: 'Operations ruled on.', labelNames: ['name', 'outcome'], registers });
  const operationTime = new Histogram({ name: 'bowline_operation_seconds', help: 'From asking for an operation to its answer.', buckets: SECONDS, registers });
  const batches = new Histogram({ name: 'bowline_batch_rows', help: 'Rows written in one commit.', buckets: [1, 2, 5, 10, 20, 50, 100, 200], registers });
  return {
    request(method, route, status, seconds) {
      requests.inc({ method, route, status });
      requestTime.observe({ method, route }, seconds);
    },
    operation(name, outcome, seconds) {
      operations.inc({ name, outcome });
      operationTime.observe(seconds);
    },
    batch: (size) => batches.observe(size),
    gauge(name, help, read) {
      new Gauge({ name, help, registers, collect() { this.set(read()); } });
    },
    gauges(name, help, label, read) {
      new Gauge({ name, help, labelNames: [label], registers, async collect() {
        for (const [value, count] of Object.entries(await read())) this.set({ [label]: value }, count);
      } });
    },
    text: () => registry.metrics(),
    contentType: registry.contentType,
  };
}
