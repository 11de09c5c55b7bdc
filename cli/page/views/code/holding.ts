import { messageOf } from '../../../../drafts/index.ts';
import type { Coding, HeldCase } from './coding.ts';
import type { CodeIssue, Trial } from './questions.ts';
import { openSandbox, type Sandbox } from './sandbox.ts';
import { runner, shippedBodies } from './sources.ts';

/** So many workers hold a draft to everybody, at the most; one processor is left to the page. */
const workers = (): number => Math.max(1, Math.min(4, (navigator.hardwareConcurrency ?? 2) - 1));

/** Holds a linked draft to everybody, in several sandboxes at once, and tells what came of each case; the newest draft alone. */
export class Holding {
  readonly #tell: (what: Coding) => void;
  #sandboxes: readonly Sandbox[] = [];

  constructor(tell: (what: Coding) => void) {
    this.#tell = tell;
  }

  /** With `ends`, also to both ends of every choice. */
  async begin(script: string, ends: boolean): Promise<void> {
    this.end();
    const program = await runner();
    const open = (): Sandbox => openSandbox(script, program);
    const first = open();
    this.#sandboxes = [first];
    const asked = await first.ask({ kind: 'cases', bodies: await shippedBodies() }).catch(() => undefined);
    if (asked?.kind !== 'cases' || this.#sandboxes[0] !== first) return;
    const cases = asked.cases.filter(({ styling }) => ends || Object.keys(styling).length === 0);
    this.#tell({ does: 'hold', ends, cases: cases.map(heldCase) });
    const others = Array.from({ length: Math.min(workers(), cases.length) - 1 }, open);
    this.#sandboxes = [first, ...others];
    const own = this.#sandboxes;
    let next = 0;
    const work = async (begun: Sandbox): Promise<void> => {
      let sandbox = begun;
      while (next < cases.length && own === this.#sandboxes) {
        const at = next++;
        const trial = cases[at];
        if (!trial) return;
        try {
          const came = await sandbox.ask({ kind: 'try', ...trial });
          if (own === this.#sandboxes && came.kind === 'tried') this.#tell({ does: 'held', at, came });
        } catch (error) {
          if (own !== this.#sandboxes) return;
          const issue: CodeIssue = {
            code: 'program-fault',
            severity: 'error',
            path: '',
            message: messageOf(error),
          };
          this.#tell({ does: 'held', at, came: { kind: 'tried', outcome: 'thrown', issues: [issue] } });
          // Ended code is begun again for the next.
          sandbox = open();
        }
      }
      sandbox.end();
    };
    await Promise.all(own.map(work));
  }

  end(): void {
    for (const sandbox of this.#sandboxes) sandbox.end();
    this.#sandboxes = [];
  }
}

const heldCase = ({ body, styling }: Trial): HeldCase => ({
  name: String(body.name ?? ''),
  choices: Object.entries(styling)
    .map(([name, value]) => `${name} ${value}`)
    .join(', '),
  came: undefined,
});
