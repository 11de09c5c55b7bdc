import type { Issue } from '../issue.ts';

/** What a draft has to say beside its steps. */
export interface IssueBook {
  /** A step that cannot be drawn for this body: nothing is cut once one is refused. */
  readonly refuse: (issue: Issue) => void;
  readonly refusals: () => readonly Issue[];
  /** Something to be said of the garment that does not stand in its way. */
  readonly remark: (issue: Issue) => void;
  readonly remarks: () => readonly Issue[];
}

/** Starts an empty book. */
export function issueBook(): IssueBook {
  const refused: Issue[] = [];
  const remarked: Issue[] = [];
  return {
    refuse: (issue) => {
      refused.push(issue);
    },
    refusals: () => [...refused],
    remark: (issue) => {
      remarked.push(issue);
    },
    remarks: () => [...remarked],
  };
}
