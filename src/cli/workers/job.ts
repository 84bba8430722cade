/** What a job is: a named piece of work whose input and output are plain data, so that any thread can do it. */

/** The work itself. Input and output pass from thread to thread as copies: plain data, no functions. */
export type Job<Input, Output> = (input: Input) => Output | Promise<Output>;

/** Jobs by name, each loaded when it is first asked for. */
export type Jobs = Readonly<Record<string, () => Promise<Job<never, unknown>>>>;

export type NameOf<Registry extends Jobs> = keyof Registry & string;

export type InputOf<Registry extends Jobs, Name extends NameOf<Registry>> = Parameters<
  Awaited<ReturnType<Registry[Name]>>
>[0];

export type OutputOf<Registry extends Jobs, Name extends NameOf<Registry>> = Awaited<
  ReturnType<Awaited<ReturnType<Registry[Name]>>>
>;

/** How one job ended. */
export type Outcome<Output> =
  | { readonly ok: true; readonly value: Output }
  /** What the job threw: an `EngineError` and an `IssuesError` keep code, data and issues. */
  | { readonly ok: false; readonly error: Error };

/** What a job may take. With a limit it is always done in a thread of its own, which can be stopped. */
export interface JobLimits {
  /** Longest time from the moment the work begins [s]. */
  readonly seconds?: number;
  /** Most memory, in MiB, over what the process held before. */
  readonly memory?: number;
}
