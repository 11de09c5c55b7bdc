import { type Profiler, Session } from 'node:inspector/promises';

/** A stage of the work: everything done while this function of this file is at work, inner stages apart. */
export interface Stage {
  readonly name: string;
  readonly file: string;
  readonly function: string;
}

/** Microseconds between two looks at what the program is doing. */
const interval = 200;

/**
 * The share of time that each stage takes while `work` runs, by looking at the stack thousands of times a second.
 * The code that is measured needs no clocks of its own. What belongs to no stage counts as `the rest`.
 */
export async function timeSpent(
  work: () => void,
  stages: readonly Stage[],
): Promise<ReadonlyMap<string, number>> {
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.setSamplingInterval', { interval });
  await session.post('Profiler.start');
  work();
  const { profile } = await session.post('Profiler.stop');
  session.disconnect();
  return shares(profile, stages);
}

function shares({ nodes }: Profiler.Profile, stages: readonly Stage[]): ReadonlyMap<string, number> {
  const known = new Map(nodes.map((node) => [node.id, node]));
  const hits = new Map([...stages.map(({ name }) => name), 'the rest'].map((name) => [name, 0]));
  let all = 0;
  const open = nodes.slice(0, 1).map((node) => ({ node, stage: 'the rest' }));
  for (let next = open.pop(); next; next = open.pop()) {
    const { node } = next;
    const { functionName, url } = node.callFrame;
    const entered = stages.find((stage) => stage.function === functionName && url.endsWith(stage.file));
    const stage = entered?.name ?? next.stage;
    const hit = functionName === '(idle)' ? 0 : (node.hitCount ?? 0);
    all += hit;
    hits.set(stage, (hits.get(stage) ?? 0) + hit);
    for (const id of node.children ?? []) {
      const child = known.get(id);
      if (child) open.push({ node: child, stage });
    }
  }
  return new Map([...hits].map(([name, count]) => [name, count / Math.max(1, all)]));
}
