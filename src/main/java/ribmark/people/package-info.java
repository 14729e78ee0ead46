/** Accounts, roles, groups, signing in, and who is acting. It does not know what people do once they are in. */
package ribmark.people;
