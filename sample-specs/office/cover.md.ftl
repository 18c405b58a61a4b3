# ${section.number} ${section.title}

${job.title}

${issue}

<#if job.note?has_content>${job.note}</#if>
