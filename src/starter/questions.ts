/** The questions a new file is made from: one table that the conversation, the options and the help all follow. */
import { askedQuestions } from './asked-questions.js';
import { furtherQuestions } from './further-questions.js';

/** Every question, first what is asked. */
export const questions = [...askedQuestions, ...furtherQuestions] as const;

export type QuestionKey = (typeof questions)[number]['key'];

/** Answers as they were typed or given as options. */
export type RawAnswers = Readonly<Partial<Record<QuestionKey, string>>>;
