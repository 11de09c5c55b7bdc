/** What was thrown, in words: the message of an error, or else the thing itself. */
export const messageOf = (thrown: unknown): string =>
  thrown instanceof Error ? thrown.message : String(thrown);
