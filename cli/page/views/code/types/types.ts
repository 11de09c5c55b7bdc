import type { DraftFiles } from '../../../../own-draft/draft-files.ts';
import type { TypeAnswer, TypedName, TypedPart, TypeProblem, TypeQuestion } from './messages.ts';

/** How types stand. */
export interface Typing {
  readonly is: 'loading' | 'here' | 'failed';
  /** What they do not allow, in the files as they are in `of`. */
  readonly problems: readonly TypeProblem[];
  readonly of: DraftFiles;
  /** Whether every file was looked at. */
  readonly whole: boolean;
}

/** What is told of a place. */
type Told = Extract<TypeAnswer, { readonly kind: 'meant' | 'parted' }>;

/** Files are looked at once nobody has typed for so long, ms. */
const pause = 400;

/** Asks the worker that knows types; it is begun by this, once the page has shown that it is loaded, and ends with it. */
export class Types {
  #worker: Worker | undefined;
  readonly #hear: (typing: Typing) => void;
  #typing: Typing = { is: 'loading', problems: [], of: {}, whole: false };
  #told: DraftFiles = {};
  #checked: { readonly number: number; readonly files: DraftFiles } | undefined;
  #number = 0;
  readonly #beginning: ReturnType<typeof setTimeout>;
  #timer: ReturnType<typeof setTimeout> | undefined;
  readonly #asked = new Map<number, (answer: Told) => void>();

  constructor(hear: (typing: Typing) => void) {
    this.#hear = hear;
    this.#beginning = setTimeout(() => {
      this.#worker = new Worker('types.js', { type: 'module' });
      this.#worker.addEventListener('message', ({ data }: MessageEvent<TypeAnswer>) => this.#answered(data));
      this.#worker.addEventListener('error', () => this.#say({ ...this.#typing, is: 'failed' }));
    }, 0);
    hear(this.#typing);
  }

  /** To be told of the files as they change, and which is looked at. */
  update(files: DraftFiles, file: string): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.#tell(files);
      const number = ++this.#number;
      this.#checked = { number, files };
      this.#ask({ kind: 'check', number, file });
    }, pause);
  }

  /** What a name means; nothing before the compiler is here, nor where nothing is known of it. */
  async meaning(files: DraftFiles, file: string, at: number): Promise<TypedName | undefined> {
    const answer = await this.#about('mean', files, file, at);
    return answer?.kind === 'meant' ? answer.meant : undefined;
  }

  /** What may stand behind the dot that is before a place. */
  async parts(files: DraftFiles, file: string, at: number): Promise<readonly TypedPart[]> {
    const answer = await this.#about('part', files, file, at);
    return answer?.kind === 'parted' ? answer.parts : [];
  }

  #about(kind: 'mean' | 'part', files: DraftFiles, file: string, at: number): Promise<Told | undefined> {
    if (this.#typing.is !== 'here') return Promise.resolve(undefined);
    this.#tell(files);
    const number = ++this.#number;
    return new Promise((resolve) => {
      this.#asked.set(number, resolve);
      this.#ask({ kind, number, file, at });
    });
  }

  end(): void {
    clearTimeout(this.#beginning);
    clearTimeout(this.#timer);
    this.#worker?.terminate();
  }

  /** Only what is otherwise goes over: a garment has a hundred files. */
  #tell(files: DraftFiles): void {
    const changed = Object.entries(files).filter(([file, text]) => this.#told[file] !== text);
    const gone = Object.keys(this.#told).filter((file) => !Object.hasOwn(files, file));
    this.#told = files;
    if (changed.length > 0 || gone.length > 0)
      this.#ask({ kind: 'files', changed: Object.fromEntries(changed), gone });
  }

  #ask(question: TypeQuestion): void {
    this.#worker?.postMessage(question);
  }

  #answered(answer: TypeAnswer): void {
    switch (answer.kind) {
      case 'failed':
        this.#say({ ...this.#typing, is: 'failed' });
        break;
      case 'meant':
      case 'parted':
        this.#asked.get(answer.number)?.(answer);
        this.#asked.delete(answer.number);
        break;
      case 'checked': {
        const { problems, whole } = answer;
        if (this.#checked?.number === answer.number)
          this.#say({ is: 'here', problems, whole, of: this.#checked.files });
      }
    }
  }

  #say(typing: Typing): void {
    this.#typing = typing;
    this.#hear(typing);
  }
}
