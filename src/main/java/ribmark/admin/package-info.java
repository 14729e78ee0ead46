/** The commands of the shell. Each reads what it was given, asks the part that knows, and prints the answer for people or for programs. */
package ribmark.admin;
