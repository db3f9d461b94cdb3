"""Spanish as it is spoken on building sites in North America: usted, short imperatives."""
