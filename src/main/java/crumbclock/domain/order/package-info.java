/** Orders, their cakes and batches, and how each is handed over. */
package crumbclock.domain.order;
