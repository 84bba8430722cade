/** Where a thread starts. */
import { jobs } from './jobs.js';
import { serveJobs } from './serve-jobs.js';

serveJobs(jobs);
