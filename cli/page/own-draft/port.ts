/** An end of a channel, in a browser or in Node. */
export interface Port {
  postMessage(data: unknown): void;
  addEventListener(type: 'message', hear: (event: { readonly data: unknown }) => void): void;
  /** Before this nothing is heard. */
  start(): void;
  close(): void;
}
