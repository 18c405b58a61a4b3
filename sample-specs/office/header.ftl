${office.name}: ${job.title}

${issue}
