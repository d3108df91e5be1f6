/** Orders and batches from tables or JSON to requests, with every time in minutes. */
package crumbclock.formats.order;
