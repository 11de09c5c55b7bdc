/** What is known of a name: how it is used, and what it is. */
export interface NameMeaning {
  readonly signature: string;
  readonly says: string;
}
