/** A new file from a few answers. */
export { askedQuestions } from './asked-questions.js';
export { furtherQuestions } from './further-questions.js';
export type { NewAssumption } from './new-file.js';
export { type AnswerKind, asksIn, belongsTo, type Choice, exampleOf, type Question } from './question.js';
export { type QuestionKey, questions, type RawAnswers } from './questions.js';
export { faultOf } from './read-answers.js';
export { type StartedFile, startFile } from './start-file.js';
