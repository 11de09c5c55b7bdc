/** A file that can be taken away. */
export interface TakenFile {
  readonly name: string;
  readonly text: string;
}
