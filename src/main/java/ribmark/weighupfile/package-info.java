/** A weigh-up read from a file, each fault named at its place, and its score written as one. It reckons nothing itself. */
package ribmark.weighupfile;
